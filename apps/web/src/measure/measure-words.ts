import type { ByLanguage } from "../words/use-words.js";

interface MeasureWords {
  readonly decimalSign: "." | ",";
  readonly remedy: (reason: string) => string;
  readonly notWhole: string;
  readonly atLeast: (bound: string) => string;
  readonly above: (bound: string) => string;
  readonly atMost: (bound: string) => string;
  readonly below: (bound: string) => string;
  readonly bounds: (parts: readonly string[]) => string;
}

const sentence = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

export const measureWords: ByLanguage<MeasureWords> = {
  en: {
    decimalSign: ".",
    remedy: (reason) => `${sentence(reason)}. Type a number such as 12.5.`,
    notWhole: "Type a whole number.",
    atLeast: (bound) => `at least ${bound}`,
    above: (bound) => `more than ${bound}`,
    atMost: (bound) => `at most ${bound}`,
    below: (bound) => `less than ${bound}`,
    bounds: (parts) => `It has to be ${parts.join(" and ")}.`,
  },
  es: {
    decimalSign: ",",
    remedy: (reason) => `${sentence(reason)}. Escriba un número como 12,5.`,
    notWhole: "Escriba un número entero.",
    atLeast: (bound) => `como mínimo ${bound}`,
    above: (bound) => `más de ${bound}`,
    atMost: (bound) => `como máximo ${bound}`,
    below: (bound) => `menos de ${bound}`,
    bounds: (parts) => `Tiene que ser ${parts.join(" y ")}.`,
  },
};
