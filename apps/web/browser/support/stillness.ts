import type { BrowserContext, Page } from "playwright-core";

/** What a page has under way, kept by the page itself. */
interface Watched {
  /** Questions to its workers that are not answered, requests that run, and timers that will soon do something. */
  readonly underWay: ReadonlySet<unknown>;
  /** When something of it last ended, or changed what is shown; on the page's own clock. */
  readonly changedAt: () => number;
}

declare global {
  var watched: Watched;
}

/** Lets every page of the context, from its start, keep count of what it has under way. */
export const watchStillness = (context: BrowserContext): Promise<unknown> =>
  context.addInitScript(() => {
    /** A longer timer is not about what the page has to say: it tries a server again, or lets go of something. */
    const SOON_MS = 1000;
    const underWay = new Set<unknown>();
    let changed = 0;
    const touch = (): void => {
      changed = performance.now();
    };
    const end = (what: unknown): void => {
      if (underWay.delete(what)) touch();
    };

    // Questions and answers of a worker carry the same id.
    const { postMessage } = Worker.prototype;
    const heard = new WeakSet<Worker>();
    Worker.prototype.postMessage = function (this: Worker, ...said: unknown[]) {
      if (!heard.has(this)) {
        heard.add(this);
        this.addEventListener("message", ({ data }: MessageEvent<{ readonly id?: string } | undefined>) => end(data?.id));
      }
      const { id } = (said[0] ?? {}) as { readonly id?: string };
      if (id !== undefined) underWay.add(id);
      Reflect.apply(postMessage, this, said);
    };

    const { fetch, setTimeout, clearTimeout } = window;
    window.fetch = (...request) => {
      const answer = fetch(...request);
      underWay.add(answer);
      const over = (): void => end(answer);
      answer.then(over, over);
      return answer;
    };
    const timed = (run: (...values: readonly unknown[]) => void, ms = 0, ...values: readonly unknown[]): number => {
      const timer: number = setTimeout(() => {
        end(timer);
        run(...values);
      }, ms);
      if (ms <= SOON_MS) underWay.add(timer);
      return timer;
    };
    Object.assign(window, {
      setTimeout: timed,
      clearTimeout: (timer: number | undefined) => {
        end(timer);
        clearTimeout(timer);
      },
      watched: { underWay, changedAt: () => changed } satisfies Watched,
    });
    new MutationObserver(touch).observe(document, { subtree: true, childList: true, characterData: true, attributes: true });
  });

/** Waits until a page has nothing under way, and has shown the same for a moment. */
export const stillness = (page: Page): Promise<void> =>
  page.evaluate(
    () =>
      new Promise<void>((resolve, reject) => {
        /** Time for what no script can see: a part of the app that is fetched, a look into the device's own store. */
        const MOMENT_MS = 300;
        const PATIENCE_MS = 30_000;
        const began = performance.now();
        const look = (): void => {
          const now = performance.now();
          if (watched.underWay.size === 0 && now - watched.changedAt() > MOMENT_MS) resolve();
          else if (now - began > PATIENCE_MS) reject(new Error(`the page never came to rest: ${[...watched.underWay].join()}`));
          else requestAnimationFrame(look);
        };
        look();
      }),
  );
