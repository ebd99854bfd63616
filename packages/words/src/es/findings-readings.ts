import type { FindingCatalogue } from "../catalogue.js";

/** Readings that contradict one another. */
export const readingFindings = {
  "gauging.tube-ends-disagree": {
    title: "Los dos extremos de un tubo no concuerdan",
    says: (of) =>
      `${of.name("shaft")} da ${of.lean("sourceEndDeg")} en el extremo de la salida y ${of.lean("drivenEndDeg")} en el conducido: ${of.gauged("differenceDeg")} de diferencia, donde el inclinómetro explica ${of.gauged("allowedDeg")}.`,
    doNext: (of) =>
      `${of.doubt} Lea los dos extremos desde un lado, sobre metal limpio, con el árbol girado para que la cara quede a escuadra.`,
  },
  "gauging.repeats-disagree": {
    title: "Lecturas repetidas no concuerdan",
    says: (of) =>
      `En ${of.name("shaft")} se leyó ${of.lean("firstDeg")} y ${of.lean("secondDeg")}: ${of.gauged("differenceDeg")} de diferencia, donde el inclinómetro explica ${of.gauged("allowedDeg")}.`,
    doNext: (of) => `${of.doubt} Levante el inclinómetro y limpie el sitio entre lecturas.`,
  },
  "gauging.difference-disagrees": {
    title: "La lectura con cero relativo no concuerda",
    says: (of) =>
      `La lectura con cero relativo${of.has("from") ? ` de ${of.name("from")} a ${of.name("to")}` : ""} no encaja con las lecturas de los propios árboles: ${of.gauged("differenceDeg")} de diferencia, donde el inclinómetro explica ${of.gauged("allowedDeg")}.`,
    doNext: (of) => `${of.doubt} Ponga a cero el inclinómetro en el primer árbol y lea el segundo desde el mismo lado sin apagarlo.`,
  },
  "gauging.sides-disagree": {
    title: "Izquierda y derecha no concuerdan",
    says: (of) =>
      `${of.name("shaft")} da ${of.lean("firstDeg")} donde desde el otro lado se esperaba ${of.lean("secondDeg")}: ${of.gauged("differenceDeg")} de diferencia, donde el inclinómetro explica ${of.gauged("allowedDeg")}.`,
    doNext: (of) => `${of.doubt} Compruebe el cero dando la vuelta al inclinómetro, y lea otra vez el árbol desde un lado.`,
  },
  "gauging.zero-check-disagrees": {
    title: "La comprobación del cero no concuerda",
    says: (of) =>
      `Una lectura de la comprobación del cero dista ${of.gauged("differenceDeg")} de lo que predicen las demás, donde el inclinómetro explica ${of.gauged("allowedDeg")}.`,
    doNext: (of) =>
      `${of.doubt} Repita la comprobación dos veces en un sitio firme y limpio; si sigue sin concordar, no use este inclinómetro.`,
  },
  "gauging.wrong-side-of-level": {
    title: "Extremo más bajo probablemente anotado al revés",
    says: (of) => `Las lecturas solo encajan si el extremo más bajo de ${of.name("shaft")} era el otro.`,
    doNext: (of) => `Mire el árbol: ¿qué extremo está más bajo? Corrija el extremo más bajo en ${of.place}, o repítala.`,
  },
  "gauging.rows-swapped": {
    title: "Dos lecturas probablemente cambiadas",
    says: (of) => `Las lecturas de ${of.numbers.all(of.names("shafts"))} solo encajan si cada una está en el lugar de la otra.`,
    doNext: () => "Lea las dos otra vez y corrija el caso; no se ha cambiado nada por usted.",
  },
  "gauging.not-zeroed": {
    title: "Inclinómetro probablemente sin poner a cero",
    says: (of) =>
      `La lectura de ${of.name("from")} a ${of.name("to")} encaja con una lectura corriente de ${of.name("to")}, no con una puesta a cero en ${of.name("from")}.`,
    doNext: () => "Ponga a cero el inclinómetro en el primer árbol y lea otra vez el segundo, o anote la lectura como corriente.",
  },
  "gauging.reading-set-aside": {
    title: "Una lectura quedó apartada",
    says: (of) =>
      of.text("shaft") === "zero"
        ? "Una lectura de la comprobación del cero contradice a las demás y no entró en el resultado."
        : `${of.name("shaft")} dio ${of.lean("readingDeg")} en ${of.place}; eso contradice a las demás lecturas y no entró en el resultado.`,
    doNext: () => "Lea otra vez ese sitio. Si fue un descuido, corríjalo; si se mantiene, busque la causa antes de montar nada.",
  },
} satisfies Partial<FindingCatalogue>;
