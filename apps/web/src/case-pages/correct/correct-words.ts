import type { ByLanguage } from "../../words/use-words.js";

export interface CorrectWords {
  readonly gaugeFirst: string;
  readonly gaugeFirstHelp: string;
  readonly best: string;
  readonly atOnce: string;
  readonly changesAtOnce: (count: number) => string;
  readonly mayMove: string;
  readonly everything: string;
  readonly notAxle: string;
  readonly searching: string;
  readonly stop: string;
  readonly stopped: string;
  readonly again: string;
  readonly failed: string;
  readonly older: string;
  readonly refused: string;
  readonly refusedHelp: string;
  readonly allHold: string;
  readonly allHoldUnknown: string;
  readonly noParts: string;
  readonly choose: string;
  readonly chosen: string;
  readonly tryIt: string;
  readonly whatItDoes: string;
  readonly steps: string;
  readonly left: string;
  readonly motion: string;
  readonly toDescribe: string;
  readonly answers: string;
  readonly single: string;
  readonly withoutAxle: string;
  readonly nothing: string;
  readonly cutToMeasure: string;
  readonly cutToMeasureHelp: string;
  readonly chosenTitle: string;
  readonly chosenAt: (day: string) => string;
  readonly madeAt: (day: string) => string;
  readonly markMade: string;
  readonly notMade: string;
  readonly drop: string;
  readonly proveNext: string;
  readonly proved: string;
  readonly toGauge: string;
  readonly toProve: string;
}

export const correctWords: ByLanguage<CorrectWords> = {
  en: {
    gaugeFirst: "Gauge first",
    gaugeFirstHelp: "What a change would do follows from how the shafts lie now.",
    best: "What cures it",
    atOnce: "Changes at once",
    changesAtOnce: (count) => (count === 1 ? "One" : count === 2 ? "Up to two" : "Up to three"),
    mayMove: "What may be moved",
    everything: "Everything",
    notAxle: "Not the axle",
    searching: "Looking through the stock",
    stop: "Stop",
    stopped: "Stopped before the end.",
    again: "Look again",
    failed: "The search broke off. Nothing of the case is lost.",
    older: "These are of the case as it was a moment ago.",
    refused: "No plan can be made yet",
    refusedHelp: "What stands in the way:",
    allHold: "chance that every limit holds",
    allHoldUnknown: "at most, as the slip spline or a length is not measured",
    noParts: "Put on the shelf below what you could fit or move; then the best of it is found here.",
    choose: "Choose this plan",
    chosen: "Chosen",
    tryIt: "Try it",
    whatItDoes: "What it does",
    steps: "The work, step by step",
    left: "left over",
    motion: "shaking",
    toDescribe: "Enter lengths in Describe",
    answers: "Quick answers",
    single: "Which single change helps most?",
    withoutAxle: "Can it be done without touching the axle?",
    nothing: "What if nothing is done?",
    cutToMeasure: "If one thing alone could be cut to measure",
    cutToMeasureHelp: "The amount that leaves most room to the nearest limit; below nought a limit is still passed.",
    chosenTitle: "The work",
    chosenAt: (day) => `Chosen on ${day}.`,
    madeAt: (day) => `Made on ${day}.`,
    markMade: "Mark as made",
    notMade: "Not made after all",
    drop: "Not this one",
    proved: "It was gauged again since: Prove shows how it came out.",
    toGauge: "Go to Gauge",
    toProve: "Go to Prove",
    proveNext: "Gauge again after the work: Prove holds it against what was foretold.",
  },
  es: {
    gaugeFirst: "Mida primero",
    gaugeFirstHelp: "Lo que haría un cambio depende de cómo están ahora los árboles.",
    best: "Qué lo cura",
    atOnce: "Cambios a la vez",
    changesAtOnce: (count) => (count === 1 ? "Uno" : count === 2 ? "Hasta dos" : "Hasta tres"),
    mayMove: "Qué se puede mover",
    everything: "Todo",
    notAxle: "El eje no",
    searching: "Buscando entre las piezas",
    stop: "Parar",
    stopped: "Parado antes del final.",
    again: "Buscar otra vez",
    failed: "La búsqueda se interrumpió. No se ha perdido nada del caso.",
    older: "Esto es del caso como estaba hace un momento.",
    refused: "Aún no se puede hacer un plan",
    refusedHelp: "Qué lo impide:",
    allHold: "probabilidad de cumplir todos los límites",
    allHoldUnknown: "como mucho, pues falta medir la estría deslizante o una longitud",
    noParts: "Ponga abajo en el estante lo que podría montar o mover; aquí se encuentra lo mejor de ello.",
    choose: "Elegir este plan",
    chosen: "Elegido",
    tryIt: "Probarlo",
    whatItDoes: "Qué consigue",
    steps: "El trabajo, paso a paso",
    left: "queda",
    motion: "sacudida",
    toDescribe: "Anotar longitudes en Describir",
    answers: "Respuestas rápidas",
    single: "¿Qué cambio por sí solo ayuda más?",
    withoutAxle: "¿Se puede hacer sin tocar el eje?",
    nothing: "¿Y si no se hace nada?",
    cutToMeasure: "Si una sola cosa se pudiera hacer a medida",
    cutToMeasureHelp: "La cantidad que deja más margen hasta el límite más cercano; por debajo de cero aún se pasa un límite.",
    chosenTitle: "El trabajo",
    chosenAt: (day) => `Elegido el ${day}.`,
    madeAt: (day) => `Hecho el ${day}.`,
    markMade: "Marcar como hecho",
    notMade: "No se hizo al final",
    drop: "Este no",
    proved: "Se ha medido otra vez desde entonces: Comprobar muestra cómo salió.",
    toGauge: "Ir a Medir",
    toProve: "Ir a Comprobar",
    proveNext: "Mida otra vez tras el trabajo: Comprobar lo compara con lo predicho.",
  },
};
