import type { ByLanguage } from "../words/use-words.js";

interface CasesWords {
  readonly title: string;
  readonly settings: string;
  readonly newCase: string;
  readonly none: string;
  readonly noneHelp: string;
  readonly examples: string;
  readonly examplesHelp: string;
  readonly example: { readonly [name: string]: string };
  readonly untitled: string;
}

export const casesWords: ByLanguage<CasesWords> = {
  en: {
    title: "Cases",
    settings: "Settings",
    newCase: "New case",
    none: "No cases yet",
    noneHelp: "Start one for the vehicle on the lift, or open an example to look around.",
    examples: "Examples",
    examplesHelp: "Vehicles of an invented fleet. Opening one puts a copy among your cases.",
    example: {
      "one-piece": "One-piece shaft",
      "two-piece": "Two-piece shaft with a support bearing",
      "three-piece": "Three-piece shaft",
      "four-wheel-drive": "Four-wheel drive",
      corrected: "Corrected and gauged again",
    },
    untitled: "Untitled case",
  },
  es: {
    title: "Casos",
    settings: "Ajustes",
    newCase: "Caso nuevo",
    none: "Aún no hay casos",
    noneHelp: "Empiece uno para el vehículo del elevador, o abra un ejemplo para explorar.",
    examples: "Ejemplos",
    examplesHelp: "Vehículos de una flota inventada. Al abrir uno se copia entre sus casos.",
    example: {
      "one-piece": "Árbol de una pieza",
      "two-piece": "Árbol de dos piezas con apoyo central",
      "three-piece": "Árbol de tres piezas",
      "four-wheel-drive": "Tracción a las cuatro ruedas",
      corrected: "Corregido y medido de nuevo",
    },
    untitled: "Caso sin título",
  },
};
