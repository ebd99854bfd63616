import type { Language, Units } from "@halfturn/words";

export type { Units };

export type Theme = "light" | "dark" | "contrast";

/** How this device shows things; kept on the device, never in the case. */
export interface Settings {
  readonly language: Language;
  readonly units: Units;
  readonly theme: Theme;
}

/** What was chosen by hand; what was not follows the device. */
export type ChosenSettings = { readonly [Key in keyof Settings]?: Settings[Key] };

/** What the device itself says. */
export interface DevicePreferences {
  readonly languages: readonly string[];
  readonly dark: boolean;
  readonly moreContrast: boolean;
}

const US_REGIONS = /^[a-z]{2,3}-(?:[a-z]{4}-)?(US|LR|MM)\b/i;

/** The chosen settings, and for the rest what suits the device. */
export function settingsOf(chosen: ChosenSettings, device: DevicePreferences): Settings {
  const spoken = device.languages.map((tag) => tag.slice(0, 2).toLowerCase()).find((base) => base === "en" || base === "es");
  return {
    language: chosen.language ?? (spoken === "es" ? "es" : "en"),
    units: chosen.units ?? (US_REGIONS.test(device.languages[0] ?? "") ? "us" : "metric"),
    theme: chosen.theme ?? (device.moreContrast ? "contrast" : device.dark ? "dark" : "light"),
  };
}
