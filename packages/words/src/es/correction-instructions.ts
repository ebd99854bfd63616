import type { CorrectionReader } from "../correction-reader.js";
import type { CorrectionWords } from "../correction-words.js";
import { limitValues } from "../limit-values.js";
import { limits } from "./correction-limits.js";

const way = (of: CorrectionReader, key: string, up: string, down: string): string => (of.value(key) >= 0 ? up : down);
const nose = (of: CorrectionReader): string => `el morro del piñón ${way(of, "changeDeg", "sube", "baja")} ${of.angle("changeDeg")}`;

export const instructions: CorrectionWords["instructions"] = {
  "do-nothing": () => "Deje todo como está.",
  "fit-wedge": (of) =>
    [
      `${of.adjuster}: monte una cuña de ${of.angle("wedgeDeg")} en el asiento de la ballesta, de ${of.length("thinMm")} en su borde fino y ${of.length("thickMm")} en el grueso sobre ${of.length("padLengthMm")}; ${nose(of)}.`,
      of.is("thickEnd", "unknown")
        ? "Averigüe primero si la ballesta va por encima o por debajo del eje: eso decide hacia dónde apunta el borde grueso."
        : `El borde grueso apunta hacia la parte ${of.is("thickEnd", "forward") ? "delantera" : "trasera"} del vehículo.`,
      ...(of.value("fittedDeg") === 0 ? [] : ["Sustituye a la cuña que hay; nunca apile cuñas."]),
      ...(of.is("padAssumed", true) ? ["El largo del asiento es supuesto: mídalo antes de pedir."] : []),
    ].join(" "),
  "remove-wedge": (of) => `${of.adjuster}: quite la cuña; ${nose(of)}.`,
  "fit-support-spacer": (of) =>
    `${of.adjuster}: ${way(of, "changeMm", "baje", "suba")} ${of.length("changeMm")} el soporte intermedio de ${of.part("joint")}, hasta un total de ${of.partSize("totalMm")} de suplementos.`,
  "remove-support-spacer": (of) =>
    `${of.adjuster}: quite todos los suplementos del soporte intermedio de ${of.part("joint")}; ${way(of, "changeMm", "baja", "sube")} ${of.length("changeMm")}.`,
  "move-support": (of) =>
    `${of.adjuster}: desplace ${of.length("byMm")} el soporte intermedio de ${of.part("joint")} hacia la ${of.is("toward", "left") ? "izquierda" : "derecha"} del vehículo.`,
  "fit-mount-spacer": (of) =>
    `${of.adjuster}: deje los suplementos bajo el apoyo trasero del grupo motor en un total de ${of.partSize("totalMm")}; el apoyo ${way(of, "changeMm", "sube", "baja")} ${of.length("changeMm")}.`,
  "remove-mount-spacer": (of) =>
    `${of.adjuster}: quite todos los suplementos bajo el apoyo trasero del grupo motor; baja ${of.length("changeMm")}.`,
  "change-ride-height": (of) => `${of.adjuster}: ${way(of, "changeMm", "suba", "baje")} la carrocería ${of.length("changeMm")}.`,
  "rephase-section": (of) =>
    `${of.adjuster}: gire la horquilla del extremo conducido de ${of.part("section")} ${of.plain("steps")} ${of.value("steps") === 1 ? "paso" : "pasos"} de estriado (${of.angle("turnDeg")}) en sentido ${of.is("direction", "clockwise") ? "horario" : "antihorario"}, visto desde la salida; su fase pasa de ${of.signedAngle("beforeDeg")} a ${of.signedAngle("afterDeg")}.`,
  "set-link-length": (of) =>
    `${of.adjuster}: haga los brazos ${of.is("link", "lower") ? "inferiores" : "superiores"} ${of.length("changeMm")} más ${way(of, "changeMm", "largos", "cortos")}.`,
  "same-on-both-sides": (of) => `${of.adjuster}: haga lo mismo en ambos lados del eje.`,
  "centre-bolt-longer": (of) => `${of.adjuster}: los tornillos centrales de las ballestas han de ser ${of.partSize("byMm")} más largos.`,
  "u-bolts-longer": (of) => `${of.adjuster}: las abrazaderas en U han de ser ${of.partSize("byMm")} más largas; móntelas nuevas.`,
  "bolts-longer": (of) => `${of.adjuster}: los tornillos han de ser ${of.partSize("byMm")} más largos.`,
  "caster-changes": (of) =>
    `El avance pasa de ${of.signedAngle("beforeDeg")} a ${of.signedAngle("afterDeg")}; se admite de ${of.signedAngle("minimumDeg")} a ${of.signedAngle("maximumDeg")}. Haga comprobar la alineación antes de entregar el vehículo.`,
  "match-mark": (of) => `Marque las dos mitades de ${of.part("section")} antes de separarlas.`,
  "check-balance": (of) => `Haga comprobar el equilibrado de ${of.part("section")}: girar una mitad respecto a la otra lo cambia.`,
  "tighten-to-maker": () =>
    "Apriete todo con los pares y en el orden del fabricante del vehículo, con el peso sobre las ruedas donde el fabricante lo pida.",
  "replace-single-use-fasteners": () =>
    "Sustituya todo elemento de fijación de un solo uso: tornillos de estiramiento, tuercas autoblocantes, abrazaderas en U, tornillos de brida.",
  "check-slip": (of) =>
    `Compruebe el estriado deslizante de ${of.part("section")}: en todos los estados ${slipTravel(of)}; quedan engranados ${of.length("engagedMm")} y hacen falta al menos ${of.length("minimumEngagedMm")}.`,
  "measure-slip-before-fitting": (of) =>
    `Mida antes de montar nada: cuánto engrana el estriado deslizante de ${of.part("section")}, cuánto debe engranar y cuánto puede entrar todavía. Sin eso nadie sabe si el árbol se sale o hace tope.`,
  "check-brake-hose": () => "Compruebe que latiguillos, tubos y cables del eje llegan sin tensión y no rozan nada, en todo el recorrido.",
  "check-exhaust-clearance": () => "Compruebe que el árbol y el soporte no rozan el escape ni la carrocería en todo el recorrido.",
  "check-powertrain-clearance": () =>
    "Compruebe ventilador, manguitos, varillaje del cambio y uniones del escape: el grupo motor ha girado sobre sus apoyos delanteros.",
  "check-headlamps": () => "Haga reglar de nuevo los faros.",
  "trade-off": (of) => {
    const { value, bound } = limitValues(of);
    const cured = of.states("curedStates");
    const gain =
      cured.length === 0 ? "" : `, mientras ${of.numbers.all(cured)} ${cured.length === 1 ? "queda corregido" : "quedan corregidos"}`;
    return `${cured.length === 0 ? "Atención al" : "Cuente con el precio en el"} estado ${of.state}: ${limits[limitKind(of)]} de ${of.part("of")} pasa a ${value}, fuera de su límite de ${bound}${gain}.`;
  },
  "gauge-again": () =>
    "Mida todo otra vez a la altura de marcha, anótelo como medición tras la corrección y después pruébelo en carretera.",
};

const limitKind = (of: CorrectionReader): keyof typeof limits => of.text("limit") as keyof typeof limits;

/** Nothing is said of a direction in which it does not move; a number below nought means the same. */
function slipTravel(of: CorrectionReader): string {
  const [out, into] = [of.length("outMm"), of.length("inMm")];
  if (of.value("outMm") <= 0 && of.value("inMm") > 0) return `solo se mueve hacia dentro, como mucho ${into}`;
  if (of.value("inMm") <= 0 && of.value("outMm") > 0) return `solo se mueve hacia fuera, como mucho ${out}`;
  return `se mueve como mucho ${out} hacia fuera y ${into} hacia dentro`;
}
