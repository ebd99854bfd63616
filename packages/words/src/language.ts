/** Languages with a complete catalogue. */
export const LANGUAGES = ["en", "es"] as const;

export type Language = (typeof LANGUAGES)[number];

export const isLanguage = (value: string): value is Language => (LANGUAGES as readonly string[]).includes(value);

/** The catalogue nearest to a locale such as `es_MX.UTF-8` or `es-AR`; English where there is none. */
export function languageOf(locale: string | undefined): Language {
  const base = (locale ?? "").toLowerCase().split(/[-_.@]/)[0] ?? "";
  return isLanguage(base) ? base : "en";
}
