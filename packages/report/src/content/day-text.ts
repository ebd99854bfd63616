import type { Language } from "@halfturn/words";

/** A moment as its writer dated it, in words: the day of the text itself, whatever its time zone. */
export const dayText = (moment: string, language: Language): string =>
  new Intl.DateTimeFormat(language, { dateStyle: "long", timeZone: "UTC" }).format(new Date(`${moment.slice(0, 10)}T00:00:00Z`));
