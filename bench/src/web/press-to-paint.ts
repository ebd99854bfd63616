import type { Locator, Page } from "playwright-core";

/** Whatever has not changed by then does not change. */
const LONGEST_MS = 10_000;

export type InputEventName = "keydown" | "click" | "pointermove";

/**
 * Milliseconds from an input event, by the browser's own stamp on it, to the end of the frame that shows something else in each of `shown`: another value of a
 * field, another text, or another drawing. `event`: the first event of the press that the page hears.
 */
export async function pressToPaint(
  page: Page,
  shown: readonly Locator[],
  event: InputEventName,
  press: () => Promise<void>,
): Promise<readonly number[]> {
  const elements = await Promise.all(shown.map((locator) => locator.elementHandle()));
  const watched = await page.evaluateHandle(
    ({ elements, event, longest }) => {
      // Told of what changes: to read a list of a hundred rows twice would cost the frame that is timed.
      const changes = elements.map((element) => {
        if (element instanceof HTMLInputElement) {
          const before = element.value;
          return { isThere: () => element.value !== before, forget: () => undefined, stop: () => undefined };
        }
        if (!(element instanceof Element)) throw new Error("what is watched is not there");
        let isThere = false;
        const observer = new MutationObserver(() => {
          isThere = true;
        });
        observer.observe(element, {
          subtree: true,
          childList: true,
          characterData: true,
          attributes: element.querySelector("svg") !== null,
        });
        const forget = (): void => {
          observer.takeRecords();
          isThere = false;
        };
        return { isThere: () => isThere, forget, stop: () => observer.disconnect() };
      });
      const painted = new Promise<readonly number[]>((resolve, reject) => {
        const times: number[] = [];
        setTimeout(() => reject(new Error(`nothing changed within ${longest} ms of a ${event}`)), longest);
        const pressed = ({ timeStamp }: Event): void => {
          for (const { forget } of changes) forget();
          const look = (): void => {
            const changed = changes.flatMap(({ isThere }, k) => (times[k] === undefined && isThere() ? [k] : []));
            // A task that is asked for inside a frame runs once the frame has been drawn.
            const { port1, port2 } = new MessageChannel();
            port1.onmessage = () => {
              for (const k of changed) times[k] = performance.now() - timeStamp;
              if (changes.some((_, k) => times[k] === undefined)) return void requestAnimationFrame(look);
              for (const { stop } of changes) stop();
              resolve(times);
            };
            port2.postMessage(null);
          };
          requestAnimationFrame(look);
        };
        addEventListener(event, pressed, { capture: true, once: true });
      });
      return { painted };
    },
    { elements, event, longest: LONGEST_MS },
  );
  await press();
  const times = await watched.evaluate(({ painted }) => painted);
  await watched.dispose();
  return times;
}
