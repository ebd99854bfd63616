import type { Language } from "@halfturn/words";

/** The day goes before the month in words, which is read the same way everywhere. */
const LOCALES: Readonly<Record<Language, string>> = { en: "en-GB", es: "es" };

/** A moment of the case file as its day in words, as the report says it; as it stands where it is none. */
export function dayText(moment: string, language: Language): string {
  const date = new Date(`${moment.slice(0, 10)}T00:00:00Z`);
  return Number.isNaN(date.getTime())
    ? moment
    : new Intl.DateTimeFormat(LOCALES[language], { dateStyle: "long", timeZone: "UTC" }).format(date);
}
