import { type Language, languageOf } from "@halfturn/words";
import { keptSettings } from "./chosen-settings.js";

const KEY = "halfturn-device";
const LONGEST = 60;

const KINDS = [
  [/iPad|Tablet|Android(?!.*Mobile)/, "tablet"],
  [/Mobile|iPhone/, "phone"],
] as const;

type Kind = (typeof KINDS)[number][1] | "computer";

const NAMES: Readonly<Record<Language, Readonly<Record<Kind, string>>>> = {
  en: { tablet: "Tablet", phone: "Phone", computer: "Computer" },
  es: { tablet: "Tableta", phone: "Teléfono", computer: "Ordenador" },
};

/** "Phone 4F2A": enough to tell the devices of a shop apart until somebody gives it a name. */
export function inventedName(userAgent: string, number: number, language: Language): string {
  const kind = KINDS.find(([pattern]) => pattern.test(userAgent))?.[1] ?? "computer";
  return `${NAMES[language][kind]} ${number.toString(16).toUpperCase().padStart(4, "0")}`;
}

/** The name under which this device saves. */
export function deviceName(): string {
  const kept = localStorage.getItem(KEY);
  if (kept) return kept;
  const language = keptSettings().language ?? languageOf(navigator.language);
  const invented = inventedName(navigator.userAgent, crypto.getRandomValues(new Uint16Array(1))[0] ?? 0, language);
  localStorage.setItem(KEY, invented);
  return invented;
}

export const renameDevice = (name: string): void => localStorage.setItem(KEY, [...name].slice(0, LONGEST).join(""));
