import type { ChosenSettings, DevicePreferences } from "./settings.js";

/** Beside the database and not in it: the theme has to be known before the first thing is drawn. */
const KEY = "halfturn-settings";

const LISTS: { readonly [Key in keyof ChosenSettings]-?: readonly string[] } = {
  language: ["en", "es"],
  units: ["metric", "us"],
  theme: ["light", "dark", "contrast"],
};

/** What was kept, without anything that this version does not know. */
export function readChosen(text: string | null): ChosenSettings {
  try {
    const kept: unknown = JSON.parse(text ?? "{}");
    if (typeof kept !== "object" || kept === null) return {};
    return Object.fromEntries(
      Object.entries(LISTS).flatMap(([key, allowed]) => {
        const value = (kept as Record<string, unknown>)[key];
        return typeof value === "string" && allowed.includes(value) ? [[key, value]] : [];
      }),
    );
  } catch {
    return {};
  }
}

const DARK = "(prefers-color-scheme: dark)";
const CONTRAST = "(prefers-contrast: more)";

export const devicePreferences = (): DevicePreferences => ({
  languages: navigator.languages,
  dark: matchMedia(DARK).matches,
  moreContrast: matchMedia(CONTRAST).matches,
});

/** Calls when the device goes dark or light, or another window chose. */
export function watchPreferences(changed: () => void): () => void {
  const queries = [matchMedia(DARK), matchMedia(CONTRAST)];
  for (const query of queries) query.addEventListener("change", changed);
  window.addEventListener("storage", changed);
  return () => {
    for (const query of queries) query.removeEventListener("change", changed);
    window.removeEventListener("storage", changed);
  };
}

export const keptSettings = (): ChosenSettings => readChosen(localStorage.getItem(KEY));
export const keepSettings = (chosen: ChosenSettings): void => localStorage.setItem(KEY, JSON.stringify(chosen));
