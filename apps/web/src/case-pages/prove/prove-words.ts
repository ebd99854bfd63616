import type { ByLanguage } from "../../words/use-words.js";

export interface ProveWords {
  readonly working: string;
  readonly nothing: string;
  readonly nothingHelp: string;
  readonly toCorrect: string;
  readonly makeFirst: string;
  readonly makeFirstHelp: string;
  readonly gaugeAgain: string;
  readonly gaugeAgainHelp: string;
  readonly toGauge: string;
  readonly chosenOn: (day: string) => string;
  readonly madeOn: (day: string) => string;
  readonly figures: string;
  readonly before: string;
  readonly everyNumber: string;
  readonly earlier: string;
  readonly failed: string;
}

export const proveWords: ByLanguage<ProveWords> = {
  en: {
    working: "Holding the prediction against what was gauged",
    nothing: "Nothing to prove yet",
    nothingHelp: "Choose a correction first. What it was foretold to do is kept, and held against the gauging after the work.",
    toCorrect: "Go to Correct",
    makeFirst: "Do the work first",
    makeFirstHelp: "A correction is chosen. Do the work and mark it as made; then gauge again.",
    gaugeAgain: "Gauge again after the work",
    gaugeAgainHelp:
      "At ride height, on the same clean spots, with the stage “after correction”. Then stands here whether it came out as foretold.",
    toGauge: "Go to Gauge",
    chosenOn: (day) => `Chosen on ${day}`,
    madeOn: (day) => `made on ${day}`,
    figures: "Foretold and measured",
    before: "As found",
    everyNumber: "Every number",
    earlier: "Earlier corrections",
    failed: "It could not be worked out. Nothing of the case is lost.",
  },
  es: {
    working: "Comparando lo predicho con lo medido",
    nothing: "Aún no hay nada que comprobar",
    nothingHelp: "Elija primero una corrección. Lo que se predijo queda guardado y se compara con la medición tras el trabajo.",
    toCorrect: "Ir a Corregir",
    makeFirst: "Haga primero el trabajo",
    makeFirstHelp: "Hay una corrección elegida. Haga el trabajo y márquelo como hecho; después mida otra vez.",
    gaugeAgain: "Mida otra vez tras el trabajo",
    gaugeAgainHelp:
      "A la altura de marcha, en los mismos puntos limpios, con la etapa «tras la corrección». Después se verá aquí si salió como se predijo.",
    toGauge: "Ir a Medir",
    chosenOn: (day) => `Elegido el ${day}`,
    madeOn: (day) => `hecho el ${day}`,
    figures: "Predicho y medido",
    before: "Como llegó",
    everyNumber: "Todos los números",
    earlier: "Correcciones anteriores",
    failed: "No se pudo calcular. No se ha perdido nada del caso.",
  },
};
