import type { FindingCatalogue } from "../catalogue.js";

/** Results against their limits. */
export const limitFindings = {
  "joint.over": {
    title: "Ángulo de trabajo sobre el límite",
    says: (of) =>
      `${of.name("joint")} trabaja a ${of.angle("angleDeg")}, sobre su límite de ${of.angle("maximumDeg")} al régimen máximo del árbol: se desgasta y sacude, compensen lo que compensen las demás.`,
    doNext: () =>
      "Baje primero el ángulo de esta junta. Busque una altura de marcha cambiada, cuñas equivocadas, o un apoyo o soporte vencido antes de añadir piezas.",
  },
  "joint.under": {
    title: "Ángulo de trabajo bajo el mínimo",
    says: (of) =>
      `${of.name("joint")} trabaja a ${of.angle("angleDeg")}, por debajo de ${of.angle("minimumDeg")}: sus agujas no ruedan y marcan las pistas.`,
    doNext: (of) => `Déle al menos ${of.angle("minimumDeg")}, junto con su junta pareja para que las dos sigan compensándose.`,
  },
  "joint.uncertain": {
    title: "Ángulo de trabajo incierto",
    says: (of) =>
      `${of.name("joint")} trabaja a ${of.angle("angleDeg")}, entre ${of.angle("lowDeg")} y ${of.angle("highDeg")}: el límite cae dentro, así que no se puede decir a qué lado está.`,
    doNext: (of) => of.repeat ?? "Lea otra vez los dos árboles de esta junta, con comprobación del cero, antes de decidir.",
  },
  "cancellation.over": {
    title: "Las juntas no se compensan",
    says: (of) =>
      `Lo que las juntas dejan sin compensar sacude como una sola junta a ${of.angle("equivalentDeg")}; el límite es ${of.angle("maximumDeg")}.`,
    doNext: () => "Confirme la fase y los dos ángulos mayores, y elija después la corrección que baje el ángulo equivalente.",
  },
  "cancellation.uncertain": {
    title: "Compensación incierta",
    says: (of) =>
      `El ángulo equivalente es ${of.angle("equivalentDeg")}, entre ${of.angle("lowDeg")} y ${of.angle("highDeg")}; el límite de ${of.angle("maximumDeg")} cae dentro.`,
    doNext: (of) => of.repeat ?? "Repita la lectura que lleva la mayor parte de la incertidumbre antes de pedir o montar nada.",
  },
  "cancellation.bench-disagrees": {
    title: "La regla de banco y la respuesta exacta no concuerdan",
    says: (of) =>
      `La regla de banco deja ${of.angle("benchDeg")}, el ángulo equivalente exacto es ${of.angle("equivalentDeg")}: la regla suma ángulos, pero la sacudida de una junta crece con el cuadrado de su ángulo.`,
    doNext: () => "Guíese por el ángulo equivalente.",
  },
  "motion.driven-over": {
    title: "El extremo conducido sacude demasiado",
    says: (of) =>
      `El extremo conducido sufre ${of.acceleration("accelerationRadS2")} a ${of.speed("shaftRpm")}; el límite es ${of.acceleration("limitRadS2")}.`,
    doNext: () => "Baje el ángulo equivalente; la aceleración cae con su cuadrado.",
  },
  "motion.driven-high": {
    title: "El extremo conducido sacude de forma notable",
    says: (of) =>
      `El extremo conducido sufre ${of.acceleration("accelerationRadS2")} a ${of.speed("shaftRpm")}, por encima del aviso de ${of.acceleration("limitRadS2")}.`,
    doNext: () => "Si la queja es una vibración de dos veces por vuelta, tome esto como su causa probable.",
  },
  "motion.drive-inertia-over": {
    title: "Un tramo sacude demasiado en tracción",
    says: (of) =>
      `Movido desde la salida, ${of.name("section")} sufre ${of.acceleration("accelerationRadS2")} a ${of.speed("shaftRpm")}; el límite es ${of.acceleration("limitRadS2")}. Su propia inercia sacude la línea aunque las juntas se compensen.`,
    doNext: (of) => `Baje los ángulos de trabajo del lado de la salida de ${of.name("section")}.`,
  },
  "motion.coast-inertia-over": {
    title: "Un tramo sacude demasiado en retención",
    says: (of) =>
      `Movido desde el eje, ${of.name("section")} sufre ${of.acceleration("accelerationRadS2")} a ${of.speed("shaftRpm")}; el límite es ${of.acceleration("limitRadS2")}.`,
    doNext: (of) => `Baje los ángulos de trabajo del lado conducido de ${of.name("section")}.`,
  },
  "motion.uncertain": {
    title: "Movimiento incierto",
    says: (of) => {
      const limit = of.acceleration("limitRadS2");
      const what = of.has("section") ? of.name("section") : "El extremo conducido";
      return `${what} sufre ${of.acceleration("accelerationRadS2")} a ${of.speed("shaftRpm")}, entre ${of.acceleration("lowRadS2")} y ${of.acceleration("highRadS2")}; el límite de ${limit} cae dentro.`;
    },
    doNext: (of) => of.repeat ?? "Repita la lectura que lleva la mayor parte de la incertidumbre.",
  },
} satisfies Partial<FindingCatalogue>;
