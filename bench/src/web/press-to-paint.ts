import type { JSHandle, Locator, Page } from "playwright-core";

/** What the page notes of one press. */
interface Watched {
  readonly painted: Promise<number>;
}

/**
 * Milliseconds from an input event, by the browser's own stamp on it, to the end of the frame that shows another text (or value) in `shown`.
 * `event`: the first event of the press that the page hears.
 */
export async function pressToPaint(page: Page, shown: Locator, event: "keydown" | "click", press: () => Promise<void>): Promise<number> {
  const element = await shown.elementHandle();
  const watched: JSHandle<Watched> = await page.evaluateHandle(
    ({ element, event }) => {
      const read = (): string => (element instanceof HTMLInputElement ? element.value : (element?.textContent ?? ""));
      const before = read();
      const painted = new Promise<number>((resolve) => {
        const pressed = ({ timeStamp }: Event): void => {
          const look = (): void => {
            if (read() === before) requestAnimationFrame(look);
            else {
              // A task that is asked for inside a frame runs once the frame has been drawn.
              const { port1, port2 } = new MessageChannel();
              port1.onmessage = () => resolve(performance.now() - timeStamp);
              port2.postMessage(null);
            }
          };
          requestAnimationFrame(look);
        };
        addEventListener(event, pressed, { capture: true, once: true });
      });
      return { painted };
    },
    { element, event },
  );
  await press();
  const ms = await watched.evaluate(({ painted }) => painted);
  await watched.dispose();
  return ms;
}
