import type { FindingCatalogue } from "../catalogue.js";

/** Readings and facts that are missing. */
export const missingFindings = {
  "gauging.nothing-read": {
    title: "Nada medido",
    says: () => "No se ha medido ningún árbol de esta línea de transmisión, así que no hay nada que calcular.",
    doNext: () => "Mida la salida, cada tramo y el piñón a altura de marcha, anotando el extremo más bajo y desde qué lado.",
  },
  "gauging.shaft-not-read": {
    title: "Un árbol sin medir",
    says: (of) => `${of.name("shaft")} no se midió; sus juntas y todo lo que pasa por ellas queda sin saber.`,
    doNext: (of) => `${of.readPlace("read")} Anote qué extremo está más bajo.`,
  },
  "gauging.level-not-read": {
    title: "Ningún árbol leído respecto a la horizontal",
    says: (of) =>
      `${of.numbers.all(of.names("shafts"))} se leyeron solo unos respecto a otros: los ángulos de las juntas entre ellos valen, pero su inclinación se tomó como horizontal de media, ±${of.gauged("assumedDeg")}.`,
    doNext: (of) => `${of.readPlace("read")} Léalo respecto a la horizontal, sin poner a cero el inclinómetro en otro árbol.`,
  },
  "gauging.group-not-tied": {
    title: "Árboles leídos solo uno contra otro",
    says: (of) =>
      `${of.numbers.all(of.names("shafts"))} se leyeron uno contra otro, pero nada los une con los demás árboles, así que no se responde ningún ángulo en el que entran.`,
    doNext: (of) => of.readPlace("read"),
  },
  "gauging.no-check-reading": {
    title: "Sin lectura de contraste",
    says: (of) => `Nada contrasta la lectura de ${of.name("shaft")}, así que un descuido ahí no se puede notar.`,
    doNext: (of) => of.readPlace("extra"),
  },
  "gauging.zero-not-checked": {
    title: "Cero del inclinómetro sin comprobar",
    says: (of) => `El cero del inclinómetro no se conoce; se le concedió ±${of.gauged("assumedDeg")}, y eso ensancha los intervalos.`,
    doNext: () => "Compruebe el cero: leer, darle la vuelta en el mismo sitio, leer otra vez. Anote las dos.",
  },
  "gauging.sides-mixed": {
    title: "Leído desde los dos lados",
    says: (of) =>
      of.text("zeroKnown") === "true"
        ? "Se leyó desde la izquierda y desde la derecha. La comprobación del cero da el cero del inclinómetro, y se tuvo en cuenta."
        : "Se leyó desde la izquierda y desde la derecha, así que un error de cero entra con los dos signos y no se anula entre árboles.",
    doNext: (of) =>
      of.text("zeroKnown") === "true"
        ? "Nada; la próxima vez lea todos los árboles desde un lado."
        : "Compruebe el cero dando la vuelta al inclinómetro, o lea todos los árboles desde un lado.",
  },
  "gauging.heading-not-measured": {
    title: "Planta sin medir",
    says: (of) =>
      `Se supuso que ${of.numbers.all(of.names("shafts"))} ${of.names("shafts").length === 1 ? "va" : "van"} a lo largo del vehículo en planta, medio grado arriba o abajo.`,
    doNext: () => "Si un árbol se desvía hacia un lado, mida el desplazamiento lateral entre sus dos extremos y la distancia entre ellos.",
  },
  "gauging.check-lower-end": {
    title: "Compruebe qué extremo está más bajo",
    says: (of) =>
      `${of.name("shaft")} está anotado como ${of.lean("inclinationDeg")} y nada lo contrasta; con el otro extremo más bajo, las juntas a su lado trabajarían a ${of.angle("mirroredAnglesDeg")} entre las dos en lugar de ${of.angle("anglesDeg")}.`,
    doNext: () => "Mire el árbol: ¿qué extremo está más bajo? Confirme la palabra en la lectura, o corríjala.",
  },
  "driveline.phasing-not-measured": {
    title: "Fase supuesta, no medida",
    says: (of) => `La fase de ${of.name("section")} se anotó sin medirla.`,
    doNext: () =>
      "Compare las horquillas de los dos extremos del tramo, con un inclinómetro en cada una o con una regla, y anote lo que encuentre.",
  },
  "driveline.phasing-unknown": {
    title: "Fase desconocida",
    says: (of) => `No se conoce la fase de ${of.name("section")}, así que compensación y movimiento no se pueden calcular.`,
    doNext: () => "Mida el ángulo de su horquilla del lado de la salida a la del lado conducido; en línea es 0°, un cuarto de vuelta 90°.",
  },
  "driveline.arm-reference-missing": {
    title: "No hay horquilla desde la que contar la fase",
    says: (of) =>
      `${of.name("section")} acaba en una junta sin horquilla, así que su fase no tiene referencia y el movimiento a través de ella no se conoce.`,
    doNext: () => "Lleve una marca desde la horquilla vecina a través de esa junta, y anote la fase respecto a la marca.",
  },
  "driveline.better-phasing": {
    title: "Otra fase dejaría menos",
    says: (of) =>
      `Con ${of.name("section")} en fase ${of.phasing("bestDeg")} en lugar de ${of.phasing("phasingDeg")}, el ángulo equivalente sería ${of.angle("bestEquivalentDeg")} en lugar de ${of.angle("equivalentDeg")}.`,
    doNext: () =>
      "Compruebe que el tramo está montado como quiso su fabricante (busque marcas de montaje) antes de cambiar nada; compruebe el equilibrado tras cambiar la fase.",
  },
  "vehicle.no-maximum-speed": {
    title: "Régimen máximo del árbol sin indicar",
    says: (of) =>
      `El caso no dice el régimen máximo del árbol; se tomó ${of.has("assumedRpm") ? of.speed("assumedRpm") : of.numbers.speed(3000)}. De él depende el límite de cada junta de cruceta.`,
    doNext: () =>
      "Anote vehicle.maxShaftSpeedRpm: régimen del motor a la velocidad máxima de carretera, dividido por la relación de la marcha usada.",
  },
} satisfies Partial<FindingCatalogue>;
