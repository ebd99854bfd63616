import type { Language } from "@halfturn/words";

/** A moment of the case file as a day in words; as it stands where it is none. */
export function dayText(moment: string, language: Language): string {
  const date = new Date(moment);
  return Number.isNaN(date.getTime()) ? moment : new Intl.DateTimeFormat(language, { dateStyle: "long" }).format(date);
}
