import { registerSW } from "virtual:pwa-register";

let ready = false;
const listeners = new Set<() => void>();

const start = registerSW({
  onNeedRefresh: () => {
    ready = true;
    for (const listener of listeners) listener();
  },
});

/** A newer version of the app that the browser has fetched. */
export const update = {
  isReady: (): boolean => ready,
  start: (): void => void start(true),
  subscribe: (listener: () => void): (() => void) => {
    listeners.add(listener);
    return () => listeners.delete(listener);
  },
};
