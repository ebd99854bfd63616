import type { ByLanguage } from "../words/use-words.js";

export interface MeasureWords {
  readonly decimalSign: "." | ",";
  readonly remedy: (reason: string) => string;
  readonly notWhole: string;
  readonly atLeast: (bound: string) => string;
  readonly above: (bound: string) => string;
  readonly atMost: (bound: string) => string;
  readonly below: (bound: string) => string;
  readonly bounds: (field: string, parts: readonly string[]) => string;
  readonly leftHere: (text: string) => string;
  readonly useLeft: string;
  readonly forgetLeft: string;
  readonly together: string;
  readonly whichWay: string;
  readonly chooseWay: string;
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
    bounds: (field, parts) => `${field}: it has to be ${parts.join(" and ")}. Look at the number and its unit, or measure again.`,
    leftHere: (text) => `Typed here before and not kept: “${text}”. The case has what stands in the field.`,
    useLeft: "Put it back",
    forgetLeft: "Forget it",
    together: "These go together: they are kept in the case once all are filled in.",
    whichWay: "which way",
    chooseWay: "Choose which way, so that it goes into the case.",
  },
  es: {
    decimalSign: ",",
    remedy: (reason) => `${sentence(reason)}. Escriba un número como 12,5.`,
    notWhole: "Escriba un número entero.",
    atLeast: (bound) => `como mínimo ${bound}`,
    above: (bound) => `más de ${bound}`,
    atMost: (bound) => `como máximo ${bound}`,
    below: (bound) => `menos de ${bound}`,
    bounds: (field, parts) => `${field}: tiene que ser ${parts.join(" y ")}. Revise el número y su unidad, o mida otra vez.`,
    leftHere: (text) => `Escrito aquí antes y sin guardar: «${text}». El caso tiene lo que hay en el campo.`,
    useLeft: "Volver a ponerlo",
    forgetLeft: "Olvidarlo",
    together: "Van juntos: se guardan en el caso cuando están todos.",
    whichWay: "hacia dónde",
    chooseWay: "Elija hacia dónde, para que entre en el caso.",
  },
};
