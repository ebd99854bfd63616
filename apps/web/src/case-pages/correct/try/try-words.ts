import type { ByLanguage } from "../../../words/use-words.js";

export interface TryWords {
  readonly title: string;
  readonly help: string;
  readonly asItIs: string;
  readonly less: (what: string) => string;
  readonly more: (what: string) => string;
  readonly reset: string;
  readonly state: string;
  readonly foretold: string;
  readonly standing: string;
  readonly withChange: string;
  readonly choose: string;
  readonly working: string;
}

export const tryWords: ByLanguage<TryWords> = {
  en: {
    title: "Try it yourself",
    help: "Each slider stands only where the stock has a size. What is foretold follows at once.",
    asItIs: "as it is",
    less: (what) => `${what}: less`,
    more: (what) => `${what}: more`,
    reset: "All as it is",
    state: "State shown",
    foretold: "Foretold, not measured",
    standing: "As it stands",
    withChange: "With the change",
    choose: "Choose what is set here",
    working: "Working it out",
  },
  es: {
    title: "Pruébelo usted",
    help: "Cada mando solo se detiene donde hay una medida en existencias. Lo predicho lo sigue al momento.",
    asItIs: "como está",
    less: (what) => `${what}: menos`,
    more: (what) => `${what}: más`,
    reset: "Todo como está",
    state: "Estado mostrado",
    foretold: "Predicho, no medido",
    standing: "Como está",
    withChange: "Con el cambio",
    choose: "Elegir lo que hay puesto aquí",
    working: "Calculando",
  },
};
