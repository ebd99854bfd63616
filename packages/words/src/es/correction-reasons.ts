import type { CorrectionReader } from "../correction-reader.js";
import type { CorrectionWords } from "../correction-words.js";

const inState = (of: CorrectionReader): string => (of.has("state") ? ` en el estado ${of.state}` : "");

export const reasons: CorrectionWords["reasons"] = {
  "correction.stop-finding": (of) =>
    `${of.driveline}: un hallazgo de parada dice que lo medido no son ángulos de marcha; mida de nuevo, o anúlelo con --accept CODE (analyse da el código)`,
  "correction.phasing-not-measured": (of) =>
    `no se midió la fase de ${of.part("section")}, y un plan basado en ella sería una conjetura; mídala y escriba phasingDeg y "phasingMeasured": true, o "phasings" en una medición tras la corrección`,
  "correction.shaft-not-gauged": (of) => `no se midió ${of.part("shaft")} de ${of.driveline}; mídalo y añada la lectura`,
  "correction.moves-refused-driveline": (of) =>
    `${of.adjuster} movería también ${of.driveline}, cuyos ángulos no se sabe si son ciertos; mida antes otra vez esa línea`,
  "correction.no-driveline": () => "no se midió ninguna línea; mida una a la altura de marcha y añada las lecturas",
  "correction.no-adjusters": () => 'el caso no da nada que se pueda ajustar; añada al menos una entrada a "adjusters" con sus existencias',
  "correction.unknown-adjuster": (of) => `no hay ajuste "${of.text("adjuster")}" en el caso; añádalo o corrija el identificador`,
  "correction.unknown-driveline": (of) =>
    `${of.driveline} no está entre las líneas en uso, así que su ajuste tampoco; mida antes esa línea`,
  "correction.unknown-joint": (of) => `${of.adjuster} actúa sobre la junta "${of.text("joint")}", que no existe; corrija el identificador`,
  "correction.unknown-section": (of) =>
    `${of.adjuster} actúa sobre el tramo "${of.text("section")}", que no existe; corrija el identificador`,
  "correction.support-not-given": (of) =>
    `${of.adjuster} mueve el soporte de ${of.part("joint")}, pero en esa junta no consta ninguno; añádale "support"`,
  "correction.length-not-measured": (of) =>
    `${of.adjuster} necesita todas las longitudes y falta la de ${of.part("section")}; mídala de centro a centro de junta y escriba lengthMm`,
  "correction.powertrain-not-measured": (of) =>
    `${of.adjuster} gira el grupo motor, pero no constan su pivote ni su apoyo trasero; mídalos y escriba vehicle.powertrain`,
  "correction.axle-guide-not-measured": (of) =>
    `${of.adjuster} mueve el eje según sus ballestas o brazos, que no constan; escriba pinionPitchDegPerMm o la suspensión del eje`,
  "correction.spline-not-whole": (of) => `${of.adjuster} gira en pasos enteros de estriado, no ${of.plain("steps")}; dé un número entero`,
  "correction.amount-not-finite": (of) => `${of.adjuster}: la cantidad no es un número; dé uno`,
  "correction.removal-exceeds-fitted": (of) =>
    `${of.adjuster}: no se pueden quitar ${of.length("amountMm")} donde hay ${of.length("fittedMm")}; no quite más que eso`,
  "correction.caster-not-given": (of) =>
    `${of.adjuster} cambia el avance de un eje direccional y no constan el avance ni sus límites; escriba casterDeg, casterMinimumDeg y casterMaximumDeg`,
  "correction.caster-out-of-limits": (of) =>
    `el avance de ${of.driveline} quedaría en ${of.signedAngle("casterDeg")}, fuera de sus límites; use una cuña menor`,
  "correction.spacer-out-of-reach": (of) =>
    `${of.driveline}: ningún giro del grupo motor sube tanto su apoyo${inState(of)}; use un suplemento menor o revise vehicle.powertrain`,
  "correction.guide-out-of-reach": (of) =>
    `${of.driveline}: las ballestas o brazos del eje no llegan tan lejos${inState(of)}; use un cambio menor o revise la suspensión del eje`,
  "correction.shaft-out-of-reach": (of) =>
    `${of.driveline}: las juntas quedarían más separadas de lo que alcanzan los árboles${inState(of)}; use un cambio menor o revise las longitudes`,
  "correction.slip-below-minimum": (of) =>
    `el estriado deslizante de ${of.part("section")} se saldría ${of.length("slipTravelMm")}${inState(of)}, más allá de su engrane mínimo; use un cambio menor o un árbol más largo`,
  "correction.slip-bottoms": (of) =>
    `el estriado deslizante de ${of.part("section")} entraría ${of.length("slipTravelMm")}${inState(of)}, más allá de su recorrido; use un cambio menor o un árbol más corto`,
  "correction.too-many-combinations": (of) =>
    `las existencias dan ${of.numbers.plain(of.value("combinations"), 0)} combinaciones, más de las que se pueden revisar; admita menos cambios a la vez con --max-changes o deje fuera ajustes con --keep`,
};
