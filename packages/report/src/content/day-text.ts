import type { Language } from "@halfturn/words";

/** The day goes before the month in words, which is read the same way everywhere. */
const LOCALES: Readonly<Record<Language, string>> = { en: "en-GB", es: "es" };

/** A moment as its writer dated it, in words: the day of the text itself, whatever its time zone. */
export const dayText = (moment: string, language: Language): string =>
  new Intl.DateTimeFormat(LOCALES[language], { dateStyle: "long", timeZone: "UTC" }).format(new Date(`${moment.slice(0, 10)}T00:00:00Z`));
