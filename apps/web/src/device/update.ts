let waiting: ServiceWorker | null = null;
const listeners = new Set<() => void>();

/** A newer version of the app that the browser has fetched, and that waits. */
export const update = {
  isReady: (): boolean => waiting !== null,
  /** Lets the newer version take over; the page is opened anew by it. */
  start: (): void => waiting?.postMessage({ type: "SKIP_WAITING" }),
  subscribe: (listener: () => void): (() => void) => {
    listeners.add(listener);
    return () => listeners.delete(listener);
  },
};

function ready(worker: ServiceWorker | null): void {
  // The first version of all waits for nobody.
  if (!worker || !navigator.serviceWorker.controller) return;
  waiting = worker;
  for (const listener of listeners) listener();
}

/** How often a device that is never restarted looks for a newer version. */
const LOOK_MS = 3_600_000;

/** Keeps the app on the device, so that it starts without a network. Where a browser cannot (plain HTTP from another machine), the app works as long as it is open. */
export async function keepApp(): Promise<void> {
  if (!import.meta.env.PROD || !("serviceWorker" in navigator)) return;
  const { serviceWorker } = navigator;
  const wasControlled = serviceWorker.controller !== null;
  let opened = false;
  serviceWorker.addEventListener("controllerchange", () => {
    if (!wasControlled || opened) return;
    opened = true;
    window.location.reload();
  });
  try {
    // What is kept here is work that nobody else has yet: the browser is asked not to clear it when room gets short.
    void navigator.storage.persist();
    const registration = await serviceWorker.register("/sw.js");
    ready(registration.waiting);
    registration.addEventListener("updatefound", () => {
      const { installing } = registration;
      installing?.addEventListener("statechange", () => {
        if (installing.state === "installed") ready(installing);
      });
    });
    setInterval(() => void registration.update().catch(() => undefined), LOOK_MS);
  } catch {
    // Without it the app is only not there when the network is gone; nothing that somebody does here can mend that.
  }
}
