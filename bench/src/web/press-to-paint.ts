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
      const readOf = (element: Element | null) => (): string => {
        if (element instanceof HTMLInputElement) return element.value;
        return (element?.querySelector("svg") ? element.innerHTML : element?.textContent) ?? "";
      };
      const reads = elements.map((element) => readOf(element as Element | null));
      const before = reads.map((read) => read());
      const painted = new Promise<readonly number[]>((resolve, reject) => {
        const times: number[] = [];
        setTimeout(() => reject(new Error(`nothing changed within ${longest} ms of a ${event}`)), longest);
        const pressed = ({ timeStamp }: Event): void => {
          const look = (): void => {
            const changed = reads.flatMap((read, k) => (times[k] === undefined && read() !== before[k] ? [k] : []));
            // A task that is asked for inside a frame runs once the frame has been drawn.
            const { port1, port2 } = new MessageChannel();
            port1.onmessage = () => {
              for (const k of changed) times[k] = performance.now() - timeStamp;
              if (reads.every((_, k) => times[k] !== undefined)) resolve(times);
              else requestAnimationFrame(look);
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
