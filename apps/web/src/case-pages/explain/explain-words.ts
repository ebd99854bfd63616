import type { ByLanguage } from "../../words/use-words.js";

export interface ExplainWords {
  readonly working: string;
  readonly notGauged: string;
  readonly notGaugedHelp: string;
  readonly drivelines: string;
  readonly drawing: string;
  readonly views: { readonly side: string; readonly scale: string; readonly above: string; readonly phasing: string };
  readonly details: string;
  readonly allowed: (least: string, most: string) => string;
  readonly measuredAt: (angle: string) => string;
  readonly atMost: (most: string) => string;
  readonly exact: string;
  readonly bench: string;
  readonly benchTargets: (met: string, accepted: string) => string;
  readonly noBench: string;
  readonly motion: string;
  readonly motionAt: (speed: string) => string;
  readonly limit: (limit: string) => string;
  readonly sure: string;
  readonly biggest: string;
  readonly zero: string;
  readonly headingOf: (shaft: string) => string;
  readonly remedy: string;
  readonly accept: string;
  readonly acceptHelp: string;
  readonly acceptCancel: string;
}

export const explainWords: ByLanguage<ExplainWords> = {
  en: {
    working: "Working it out",
    notGauged: "Nothing to explain yet",
    notGaugedHelp: "As soon as the shafts are gauged, what the joints do stands here.",
    drivelines: "Driveline",
    drawing: "How it stands",
    views: { side: "Try it", scale: "From the side", above: "From above", phasing: "Phasing" },
    details: "Where the limits come from",
    allowed: (least, most) => `may run at ${least} to ${most}`,
    measuredAt: (angle) => `measured ${angle}`,
    atMost: (most) => `may run at up to ${most}`,
    exact: "Exact answer",
    bench: "Bench rule",
    benchTargets: (met, accepted) => `aims at ${met}, accepts ${accepted}`,
    noBench: "does not apply",
    motion: "What the shafts feel",
    motionAt: (speed) => `At ${speed}, the highest speed in use`,
    limit: (limit) => `limit ${limit}`,
    sure: "How sure this is",
    biggest: "What carries the uncertainty of the exact answer",
    zero: "zero of the gauge",
    headingOf: (shaft) => `${shaft}, direction from above`,
    remedy: "What to do",
    accept: "Go on in spite of it",
    acceptHelp: "The numbers are shown as if this were not so. It is put on record in the case and printed in the report.",
    acceptCancel: "Leave it",
  },
  es: {
    working: "Calculando",
    notGauged: "Aún no hay nada que explicar",
    notGaugedHelp: "En cuanto se midan los árboles, aquí se verá lo que hacen las juntas.",
    drivelines: "Transmisión",
    drawing: "Cómo está",
    views: { side: "Probar", scale: "De lado", above: "Desde arriba", phasing: "Fase" },
    details: "De dónde salen los límites",
    allowed: (least, most) => `admite de ${least} a ${most}`,
    measuredAt: (angle) => `medido ${angle}`,
    atMost: (most) => `admite hasta ${most}`,
    exact: "Respuesta exacta",
    bench: "Regla de banco",
    benchTargets: (met, accepted) => `busca ${met}, acepta ${accepted}`,
    noBench: "no se aplica",
    motion: "Lo que sufren los árboles",
    motionAt: (speed) => `A ${speed}, la velocidad más alta en uso`,
    limit: (limit) => `límite ${limit}`,
    sure: "Qué seguridad hay",
    biggest: "De dónde viene la incertidumbre de la respuesta exacta",
    zero: "cero del inclinómetro",
    headingOf: (shaft) => `${shaft}, dirección vista desde arriba`,
    remedy: "Qué hacer",
    accept: "Seguir a pesar de ello",
    acceptHelp: "Los números se muestran como si no fuera así. Queda anotado en el caso y sale impreso en el informe.",
    acceptCancel: "Dejarlo",
  },
};
