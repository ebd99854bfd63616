import { isLanguage, type Language, languageOf } from "@halfturn/words";

/** Longer headers come from no browser. */
const LONGEST = 1000;

/** The language that an Accept-Language header likes best of those there are (RFC 9110, section 12.5.4); English where it likes none. */
export function acceptedLanguage(header: string | undefined): Language {
  const wishes = (header ?? "")
    .slice(0, LONGEST)
    .split(",")
    .map((wish) => {
      const [range = "", ...parameters] = wish.split(";").map((part) => part.trim());
      const weight = parameters.find((parameter) => parameter.startsWith("q="));
      return { base: range.toLowerCase().split("-")[0] ?? "", weight: weight === undefined ? 1 : Number(weight.slice(2)) };
    })
    .filter(({ base, weight }) => isLanguage(base) && weight > 0)
    .sort((a, b) => b.weight - a.weight);
  return languageOf(wishes[0]?.base);
}
