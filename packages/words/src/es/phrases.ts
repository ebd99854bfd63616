import type { Numbers } from "../numbers/numbers.js";
import type { Phrases } from "../phrases.js";
import { isMeasuredHeading, spelledPlace } from "../what-to-repeat.js";

const TURN_ROUND = "Compruebe el cero del inclinómetro: leer, darle la vuelta en el mismo sitio, leer otra vez";

export const phrases = (numbers: Numbers): Phrases => ({
  causes: {
    "lower-end": "el extremo más bajo anotado al revés",
    side: "leído desde el otro lado que el anotado",
    "rows-swapped": "dos lecturas anotadas una en lugar de la otra",
    "not-zeroed": "el inclinómetro sin poner a cero",
    "rust-or-paint": "óxido o pintura bajo el imán",
    "bent-tube": "un tubo doblado",
    "not-on-machined-face": "el inclinómetro fuera de la cara mecanizada",
    "face-not-square": "el árbol sin girar hasta que la cara quede a escuadra",
    "not-same-spot": "no se le dio la vuelta en el mismo sitio",
    misread: "la pantalla mal leída",
    "zero-far-off": "un inclinómetro con el cero muy desviado",
  },
  places: {
    reading: (shaft) => `la lectura de ${shaft}`,
    end: {
      "source-end": (shaft) => `la lectura de ${shaft} en su extremo de la salida`,
      "driven-end": (shaft) => `la lectura de ${shaft} en su extremo conducido`,
    },
    face: (shaft) => `la lectura de la cara de ${shaft}`,
    between: (zeroedOn, readOn) => `la lectura de ${readOn} con el cero puesto en ${zeroedOn}`,
    from: { left: "desde la izquierda", right: "desde la derecha" },
    number: (number) => `n.º ${number}`,
    zeroCheck: (number) => `la lectura ${number} de la comprobación del cero`,
    entries: {
      drivelines: (number) => `línea ${number}`,
      sections: (number) => `tramo ${number}`,
      joints: (number) => `junta ${number}`,
      states: (number) => `estado ${number}`,
      gauging: (number) => `medición ${number}`,
      readings: (number) => `lectura ${number}`,
      headings: (number) => `medida en planta ${number}`,
      zeroCheck: (number) => `lectura ${number} de la comprobación del cero`,
      acceptedFindings: (number) => `hallazgo aceptado ${number}`,
      adjusters: (number) => `ajuste ${number}`,
      corrections: (number) => `corrección ${number}`,
      gears: (number) => `marcha ${number}`,
      accessories: (number) => `accesorio ${number}`,
      recordings: (number) => `registro ${number}`,
      observations: (number) => `observación ${number}`,
      runouts: (number) => `medida de salto ${number}`,
      balance: (number) => `prueba de equilibrado ${number}`,
    },
    entry: (list, number) => `entrada ${number} de "${list}"`,
    within: (inner, outer) => `${inner}, ${outer}`,
    heading: (shaft) => `la medida en planta de ${shaft}`,
  },
  readPlace: (spelled, nameOf) => {
    const { kind, shaft, other } = spelledPlace(spelled);
    if (kind === "turn-round") return `${TURN_ROUND}.`;
    if (kind === "between") return `Ponga a cero el inclinómetro en ${nameOf(shaft)} y lea ${nameOf(other)} desde el mismo lado.`;
    if (kind === "along") return `Lea ${nameOf(shaft)}.`;
    return `Lea ${nameOf(shaft)} en su extremo ${kind === "source-end" ? "de la salida" : "conducido"}.`;
  },
  repeat: ({ of, path, share }, nameOf) => {
    const part = `el ${numbers.share(share)} de la incertidumbre`;
    if (of === "zero") return `${TURN_ROUND}; del cero viene ${part}.`;
    if (of.startsWith("heading:")) {
      const again = isMeasuredHeading(path) ? " otra vez" : "";
      return `Mida${again} cuánto se desvía ${nameOf(of.slice("heading:".length))} hacia un lado en planta (desplazamiento lateral entre sus extremos); de ahí viene ${part}.`;
    }
    return `Levante el inclinómetro, limpie el sitio y repita ${nameOf(path)}; de ahí viene ${part}.`;
  },
  doubt: (likelier, readings, causes) => {
    const first = likelier ?? numbers.all(readings);
    return [
      likelier === null
        ? `Los números no dicen cuál está mal: repita ${first}.`
        : `Lo más probable es que esté mal ${first}: repítala primero.`,
      ...(causes.length === 0 ? [] : [`Lo más probable: ${numbers.any(causes)}.`]),
    ].join(" ");
  },
});
