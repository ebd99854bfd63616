import { existsSync } from "node:fs";
import { type Browser, type BrowserContext, chromium, type Page } from "playwright-core";
import { watchStillness } from "./stillness.js";

/** Where systems keep a browser of this kind. */
const PLACES = ["/usr/bin/chromium", "/usr/bin/chromium-browser", "/usr/bin/google-chrome", "/opt/google/chrome/chrome"];

const FLAGS = [
  "--headless",
  "--no-sandbox",
  "--disable-gpu",
  "--disable-quic",
  "--no-first-run",
  "--disable-background-networking",
  "--disable-component-update",
  "--disable-sync",
];

export function findBrowser(): string {
  const wanted = process.env.HALFTURN_CHROMIUM;
  const found = wanted ?? PLACES.find((place) => existsSync(place));
  if (found === undefined) throw new Error("no Chromium was found; say where it is in HALFTURN_CHROMIUM");
  return found;
}

export const launch = (): Promise<Browser> => chromium.launch({ executablePath: findBrowser(), args: FLAGS });

export const PHONE = { width: 360, height: 740 } as const;
export const DESK = { width: 1280, height: 800 } as const;
export const THEMES = ["light", "dark", "contrast"] as const;

export interface DeviceSettings {
  readonly size?: { readonly width: number; readonly height: number };
  readonly theme?: (typeof THEMES)[number];
  readonly language?: "en" | "es";
  readonly units?: "metric" | "us";
}

/** A device with nothing on it: a browser profile of its own, and a page. */
export interface Device {
  readonly page: Page;
  readonly context: BrowserContext;
  /** What went wrong on its pages so far: errors of scripts, and what the security policy blocked. */
  readonly faults: readonly string[];
}

export const openDevice = async (browser: Browser, address: string, settings: DeviceSettings = {}): Promise<Device> =>
  opened(await browser.newContext(contextOf(address, settings)), settings);

/** The same with its profile in a folder: what the app writes lies on the disk, as it does for people, and not in the browser's memory. */
export const openOnDisk = async (folder: string, address: string, settings: DeviceSettings = {}): Promise<Device> =>
  opened(
    await chromium.launchPersistentContext(folder, { executablePath: findBrowser(), args: FLAGS, ...contextOf(address, settings) }),
    settings,
  );

const contextOf = (address: string, { size = PHONE }: DeviceSettings) => ({ viewport: size, baseURL: address, hasTouch: size.width < 500 });

async function opened(context: BrowserContext, settings: DeviceSettings): Promise<Device> {
  const { theme = "light", language = "en", units = "metric" } = settings;
  await context.addInitScript((text) => localStorage.setItem("halfturn-settings", text), JSON.stringify({ theme, language, units }));
  await watchStillness(context);
  const page = await context.newPage();
  const faults: string[] = [];
  page.on("pageerror", ({ message }) => faults.push(message));
  page.on("console", (message) => {
    if (/Content Security Policy/.test(message.text())) faults.push(message.text());
  });
  return { page, context, faults };
}

/** Resolves when the app is on the device for good: it starts without a network from now on. */
export const installed = (page: Page): Promise<unknown> =>
  page.evaluate(async () => {
    const { active } = await navigator.serviceWorker.ready;
    if (active?.state !== "activated") await new Promise((resolve) => active?.addEventListener("statechange", resolve, { once: true }));
  });
