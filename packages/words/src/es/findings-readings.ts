import type { FindingCatalogue } from "../catalogue.js";

/** Readings that contradict one another. */
export const readingFindings = {
  "gauging.tube-ends-disagree": {
    title: "Los dos extremos de un tubo no concuerdan",
    says: (of) =>
      `En ${of.name("shaft")} se leyó ${of.gauged("sourceEndDeg")} en el extremo de la salida y ${of.gauged("drivenEndDeg")} en el conducido: ${of.gauged("differenceDeg")} de diferencia, donde el inclinómetro explica ${of.gauged("allowedDeg")}.`,
    doNext: () =>
      "Quite pintura y óxido de debajo del imán y lea otra vez los dos extremos desde el mismo lado, sobre la cara mecanizada o el tubo limpio, con el árbol girado para que la cara quede a escuadra. Si siguen sin concordar, compruebe si el tubo está doblado.",
  },
  "gauging.repeats-disagree": {
    title: "Lecturas repetidas no concuerdan",
    says: (of) =>
      `Las lecturas repetidas de ${of.name("shaft")} distan ${of.gauged("differenceDeg")}, donde el inclinómetro explica ${of.gauged("allowedDeg")}.`,
    doNext: () => "Levante el inclinómetro, limpie el sitio y el imán, y lea tres veces. Tache la lectura que queda sola.",
  },
  "gauging.difference-disagrees": {
    title: "La lectura con cero relativo no concuerda",
    says: (of) =>
      `La lectura con cero relativo de ${of.name("from")} a ${of.name("to")} no encaja con las lecturas de los dos árboles: ${of.gauged("differenceDeg")} de diferencia, donde el inclinómetro explica ${of.gauged("allowedDeg")}.`,
    doNext: () =>
      "Ponga a cero el inclinómetro en el primer árbol, lea el segundo desde el mismo lado sin apagarlo, y lea los dos árboles otra vez sin poner a cero.",
  },
  "gauging.sides-disagree": {
    title: "Izquierda y derecha no concuerdan",
    says: (of) =>
      `${of.name("shaft")} da ${of.gauged("differenceDeg")} de diferencia entre izquierda y derecha: el inclinómetro tiene error de cero o estaba en otro sitio.`,
    doNext: () => "Compruebe el cero dando la vuelta al inclinómetro, anote las dos lecturas, y lea otra vez el árbol desde un solo lado.",
  },
  "gauging.zero-check-disagrees": {
    title: "La comprobación del cero no concuerda consigo misma",
    says: (of) =>
      `Los pares de la comprobación dan ceros que distan ${of.gauged("differenceDeg")}, donde el inclinómetro explica ${of.gauged("allowedDeg")}.`,
    doNext: () =>
      "Repita la comprobación en un sitio firme y limpio: leer, darle la vuelta en el mismo sitio, leer. Hágalo dos veces. Si sigue sin concordar, no use este inclinómetro.",
  },
  "gauging.wrong-side-of-level": {
    title: "Extremo más bajo probablemente anotado al revés",
    says: (of) => `Las lecturas solo encajan si el extremo más bajo de ${of.name("shaft")} era el otro.`,
    doNext: () => "Mire el árbol: ¿qué extremo está más bajo? Corrija la palabra en esa lectura, o léala otra vez.",
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
    says: (of) => `Una lectura de ${of.name("shaft")} contradice a las demás y no entró en el resultado.`,
    doNext: () => "Lea otra vez ese sitio. Si fue un descuido, corríjalo; si se mantiene, busque la causa antes de montar nada.",
  },
} satisfies Partial<FindingCatalogue>;
