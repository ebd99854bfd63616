import type { Language } from "@halfturn/words";

export type Units = "metric" | "us";
export type Theme = "light" | "dark" | "contrast";

/** How this device shows things; kept on the device, never in the case. */
export interface Settings {
  readonly language: Language;
  readonly units: Units;
  readonly theme: Theme;
}
