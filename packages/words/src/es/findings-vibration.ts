import type { FindingCatalogue } from "../catalogue.js";

/** Lo que se halla al atribuir una vibración a una pieza que gira. */
export const vibrationFindings = {
  "pulses.missing": {
    title: "Faltan impulsos",
    says: (of) => `Faltaban ${of.amount("count", 0)} impulsos del tacómetro y se contaron como dados.`,
    doNext: () => "Si son muchos, revise la marca, el sensor y su distancia.",
  },
  "pulses.double": {
    title: "Impulsos dobles",
    says: (of) => `${of.amount("count", 0)} impulsos del tacómetro llegaron demasiado pronto y se dejaron fuera.`,
    doNext: () => "Si son muchos, busque una segunda mancha clara junto a la marca.",
  },
  "attribution.clipped": {
    title: "El sensor llegó al final de su escala",
    says: (of) =>
      `${of.share("clippedShare")} de las muestras están en el final de la escala: las amplitudes son demasiado pequeñas y pueden aparecer múltiplos falsos.`,
    doNext: () => "Grabe otra vez con un margen mayor, o con el sensor donde vibre menos.",
  },
  "attribution.order-not-observable": {
    title: "Un orden que esta grabación no puede mostrar",
    says: (of) =>
      `Frecuencia de ${of.order("part", "order")}: de ${of.amount("lowestHz", 0)} a ${of.amount("highestHz", 0)}\u00a0Hz; la grabación no muestra nada por encima de ${of.amount("limitHz", 0)}\u00a0Hz. Su silencio no descarta nada.${of.has("foldsToHz") ? ` Si el sensor lo deja pasar, aparece cerca de ${of.amount("foldsToHz", 0)}\u00a0Hz.` : ""}`,
    doNext: () => "Grabe con un sensor más rápido antes de descartar este orden.",
  },
  "attribution.folded-back": {
    title: "Una vibración por encima de la mitad del muestreo aparece en una frecuencia falsa",
    says: (of) =>
      `Lo que aparece a ${of.amount("seenHz", 0)}\u00a0Hz se mueve con la velocidad como lo haría ${of.order("part", "order")} a ${of.amount("frequencyHz", 0)}\u00a0Hz.`,
    doNext: () => "Grabe con un sensor más rápido: con este no se conoce su amplitud.",
  },
  "attribution.fold-back-coincides": {
    title: "Dos órdenes aparecen en la misma frecuencia",
    says: (of) =>
      `Con este muestreo ${of.order("otherPart", "otherOrder")} aparecería donde está ${of.order("part", "order")} en casi toda la grabación.`,
    doNext: () => "Grabe con un sensor más rápido, o con la velocidad subiendo despacio por la zona de la queja.",
  },
  "attribution.coincidence": {
    title: "Dos órdenes que esta grabación no separa",
    says: (of) => `Están en el mismo sitio ${of.order("part", "order")} y ${of.order("otherPart", "otherOrder")}.`,
    doNext: (of) =>
      of.text("partedByGear") === "true"
        ? "Grabe la misma velocidad en otra marcha: solo uno de los dos se mueve."
        : of.has("wheelTurns")
          ? `Cuente impulsos del árbol y grabe ${of.amount("wheelTurns", 0)} vueltas de rueda a velocidad constante, o deje uno de los dos fuera de la prueba (cambio de ruedas, árbol desconectado).`
          : "Deje uno de los dos fuera de la prueba: cambio de ruedas, árbol desconectado.",
  },
  "attribution.speed-loose": {
    title: "La velocidad no se conoce lo bastante bien",
    says: (of) => `Dentro del error de la velocidad puede ser ${of.order("part", "order")} o ${of.order("otherPart", "otherOrder")}.`,
    doNext: () => "Cuente impulsos de un árbol, o mida la circunferencia de rodadura de la rueda y anótela.",
  },
  "attribution.speed-corrected": {
    title: "Velocidad corregida por la vibración",
    says: (of) =>
      `Los órdenes están a ${of.signedShare("correctionShare")} de donde los ponen la velocidad y el neumático, y ahí se tomaron.`,
    doNext: () => "Mida la circunferencia de rodadura si la diferencia es mayor de lo que explican desgaste y presión.",
  },
  "attribution.speed-steady": {
    title: "Velocidad constante",
    says: (of) =>
      `La velocidad solo cambió ${of.share("changeShare")}, así que algo que suena siempre a una frecuencia parecería un orden.`,
    doNext: () => "Grabe otra vez con la velocidad subiendo despacio por la zona de la queja.",
  },
  "attribution.several": {
    title: "Más de un orden es grande",
    says: (of) => `Son más o menos iguales ${of.order("part", "order")} y ${of.order("otherPart", "otherOrder")}.`,
    doNext: () => "Trate ambos como causas; aíslelos uno tras otro.",
  },
  "attribution.nothing-found": {
    title: "Ningún orden destaca",
    says: () => "Nada de lo que gira se oye por encima del ruido.",
    doNext: () => "Fije el sensor más cerca de donde se siente, circule a la velocidad de la queja y grabe un minuto.",
  },
  "attribution.mostly-unexplained": {
    title: "La mayor parte no es ningún orden",
    says: (of) =>
      `${of.share("unexplainedShare")} de lo grabado no sigue ningún orden de ninguna pieza; el mayor es ${of.order("part", "order")}.`,
    doNext: () =>
      "Compruebe en el caso la relación del eje, el neumático y la marcha; busque lo que no gira con las ruedas: calzada, piezas sueltas, una resonancia.",
  },
  "attribution.resonance": {
    title: "Algo resuena",
    says: (of) =>
      of.text("excitedBy") === "orders"
        ? `Un orden es mayor al pasar por ${of.amount("frequencyHz", 1)}\u00a0Hz y decae a ambos lados.`
        : `A ${of.amount("frequencyHz", 1)}\u00a0Hz algo suena a cualquier velocidad (${of.share("energyShare")} de lo grabado).`,
    doNext: () => "Busque qué resuena ahí (soportes, bridas, piso, un árbol largo): el mismo orden vibra menos cuando eso se corrige.",
  },
  "attribution.beat": {
    title: "Dos órdenes baten",
    says: (of) =>
      `Están próximos ${of.order("part", "order")} y ${of.order("otherPart", "otherOrder")}: la vibración crece y decrece unas ${of.amount("beatHz", 1)} veces por segundo.`,
    doNext: () => "Cuente con que va y viene; corregir uno acaba con el batido, no con la vibración del otro.",
  },
  "attribution.sound-only": {
    title: "Un sonido, no una vibración",
    says: () => "Un micrófono solo da frecuencias; lo fuerte que suena una pieza dice poco de cuánto vibra.",
    doNext: () => "Para las amplitudes use un acelerómetro en el piso o en la guía del asiento.",
  },
  "attribution.slip-changes": {
    title: "El deslizamiento cambió durante la grabación",
    says: (of) =>
      `El motor giraba más deprisa que la transmisión en un ${of.share("leastShare")} unas veces y en un ${of.share("mostShare")} otras: sus órdenes se emborronan y son mayores de lo que se muestra.`,
    doNext: () =>
      "Grabe otra vez con el convertidor bloqueado o el embrague del todo acoplado; si no se puede, registre engine_rpm y tome de ahí la velocidad.",
  },
  "attribution.differentiated": {
    title: "Una velocidad o un desplazamiento, no una aceleración",
    says: () =>
      "Las amplitudes se pasaron a aceleraciones a la frecuencia propia de cada orden. Las partes, y cuál es el orden mayor, son de lo grabado: en ello los órdenes lentos cuentan más que en una aceleración.",
    doNext: () => "Compare amplitudes solo con grabaciones de la misma clase; si se sospecha de un orden rápido, grabe una aceleración.",
  },
  "attribution.engine-left-out": {
    title: "El motor quedó fuera",
    says: () => "No se conoce la marcha ni, por tanto, la velocidad del motor: lo que aquí se nombra puede ser también un orden del motor.",
    doNext: () => "Anote las marchas del vehículo y la de la grabación, o grabe otra vez en otra marcha.",
  },
} satisfies Partial<FindingCatalogue>;
