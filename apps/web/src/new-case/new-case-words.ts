import type { Layout } from "@halfturn/casefile";
import type { ByLanguage } from "../words/use-words.js";

interface NewCaseWords {
  readonly title: string;
  readonly back: string;
  readonly which: string;
  readonly layouts: { readonly [L in Layout]: { readonly name: string; readonly about: string } };
}

export const newCaseWords: ByLanguage<NewCaseWords> = {
  en: {
    title: "New case",
    back: "All cases",
    which: "Which driveline is it?",
    layouts: {
      "one-piece": { name: "One-piece", about: "One propeller shaft, two joints" },
      "two-piece": { name: "Two-piece", about: "One support bearing, three joints" },
      "three-piece": { name: "Three-piece", about: "Two support bearings, four joints" },
      "four-wheel-drive": { name: "Four-wheel drive", about: "One shaft to the rear axle, one to the front" },
    },
  },
  es: {
    title: "Caso nuevo",
    back: "Todos los casos",
    which: "¿Qué línea de transmisión es?",
    layouts: {
      "one-piece": { name: "De una pieza", about: "Un árbol de transmisión, dos juntas" },
      "two-piece": { name: "De dos piezas", about: "Un apoyo central, tres juntas" },
      "three-piece": { name: "De tres piezas", about: "Dos apoyos centrales, cuatro juntas" },
      "four-wheel-drive": { name: "Tracción a las cuatro ruedas", about: "Un árbol al eje trasero y otro al delantero" },
    },
  },
};
