import type { ByLanguage } from "../../../words/use-words.js";

export interface WhatIfWords {
  readonly title: string;
  readonly notMeasured: string;
  readonly back: string;
  readonly hint: string;
  readonly moveJoint: (joint: string) => string;
  readonly tilt: (shaft: string) => string;
  readonly up: (size: string) => string;
  readonly down: (size: string) => string;
  readonly asMeasured: string;
  readonly assumed: string;
}

export const whatIfWords: ByLanguage<WhatIfWords> = {
  en: {
    title: "What if.",
    notMeasured: "Not measured.",
    back: "Back to the measured",
    hint: "Drag a ring up or down, or pick one and press the arrow keys: everything on this page follows.",
    moveJoint: (joint) => `Move ${joint} up or down`,
    tilt: (shaft) => `Tilt ${shaft}`,
    up: (size) => `${size} up`,
    down: (size) => `${size} down`,
    asMeasured: "as measured",
    assumed: "A section length is missing; one metre is taken for it here.",
  },
  es: {
    title: "¿Y si?",
    notMeasured: "No medido.",
    back: "Volver a lo medido",
    hint: "Arrastre un anillo hacia arriba o abajo, o elija uno y pulse las flechas: toda la página lo sigue.",
    moveJoint: (joint) => `Mover ${joint} arriba o abajo`,
    tilt: (shaft) => `Inclinar ${shaft}`,
    up: (size) => `${size} arriba`,
    down: (size) => `${size} abajo`,
    asMeasured: "como se midió",
    assumed: "Falta la longitud de un tramo; aquí se toma un metro.",
  },
};
