import type { FindingCatalogue } from "../catalogue.js";

/** Lo que apareció al leer una grabación. */
export const recordingFindings = {
  "recording.length-open": {
    title: "Duración sin anotar",
    says: (of) => `El registrador no llegó a escribir la duración; se leyó hasta el final del archivo, ${of.amount("seconds", 1)}\u00a0s.`,
    doNext: () => "Mire si la grabación dura lo que duró la prueba.",
  },
  "recording.no-full-scale": {
    title: "Fondo de escala desconocido",
    says: (of) =>
      `Un archivo de sonido guarda partes del fondo de escala, y el caso no dice a qué equivale el de ${of.text("channel")}: no se pueden dar tamaños en m/s², pero sí qué pieza vibra.`,
    doNext: () => "Anote fullScale y unit del canal bajo recordings en el caso.",
  },
  "recording.last-line-broke-off": {
    title: "Última línea cortada",
    says: (of) => `La línea ${of.amount("line", 0)}, la última, acaba antes de su última celda; se dejó fuera.`,
    doNext: () => "Nada; ocurre cuando se apaga el registrador mientras escribe.",
  },
  "recording.sets-skipped": {
    title: "Conjuntos de datos omitidos",
    says: (of) => `${of.amount("sets", 0)} de los conjuntos de datos del archivo no son funciones del tiempo; se dejaron fuera.`,
    doNext: () => "Nada, si están todas las señales en el tiempo.",
  },
  "recording.unit-taken": {
    title: "Unidad tomada del tipo de dato",
    says: (of) => `El archivo no da unidad para ${of.text("channel")}; se tomó ${of.text("unit")}, como indica su tipo de dato.`,
    doNext: () => "Compruebe la unidad, y anótela bajo recordings en el caso si es otra.",
  },
  "recording.values-missing": {
    title: "Faltan valores",
    says: (of) => `${of.amount("count", 0)} muestras de ${of.text("channel")} no tienen valor.`,
    doNext: () => "Las sueltas se rellenaron con sus vecinas; los tramos más largos cuentan como huecos.",
  },
  "recording.times-repeat": {
    title: "Tiempos escritos dos veces",
    says: (of) => `${of.amount("count", 0)} muestras de ${of.text("channel")} tienen el tiempo de la anterior; se dejaron fuera.`,
    doNext: () => "Nada, si son pocas.",
  },
  "recording.stamps-rounded": {
    title: "Tiempos redondeados",
    says: (of) =>
      `Los tiempos de ${of.text("channel")} están redondeados (${of.amount("jitterPercent", 1)}\u00a0% de un paso); las muestras se tomaron a pasos iguales, a los ${of.amount("rateHz", 2)}\u00a0Hz medidos.`,
    doNext: () => "Nada; un archivo con más decimales en los tiempos no lo necesitaría.",
  },
  "recording.stamps-uneven": {
    title: "Muestreo desigual",
    says: (of) =>
      `Las muestras de ${of.text("channel")} no están a pasos iguales (fluctuación del ${of.amount("jitterPercent", 1)}\u00a0% de un paso); se interpolaron en sus tiempos a ${of.amount("rateHz", 2)}\u00a0Hz.`,
    doNext: () => "No se fíe de órdenes por encima de un cuarto de esa frecuencia; grabe con un aparato que muestree con su propio reloj.",
  },
  "recording.gaps": {
    title: "Huecos en la grabación",
    says: (of) =>
      `${of.text("channel")} tiene ${of.amount("count", 0)} huecos, ${of.amount("lostS", 2)}\u00a0s en total; el tramo más largo sin huecos dura ${of.amount("longestRunS", 1)}\u00a0s, y solo se usó ese.`,
    doNext: () => "Grabe otra vez si es demasiado corto: un cable en lugar de radio, y nada más en marcha en el aparato.",
  },
  "recording.channel-left-out": {
    title: "Canal omitido",
    says: (of) => `${of.text("channel")} no abarca las mismas muestras que ${of.text("other")}, así que se dejó fuera.`,
    doNext: (of) => `Para trabajar solo con él, nómbrelo: --channel ${of.text("channel")}.`,
  },
  "recording.speed-followed": {
    title: "La velocidad se siguió en la propia vibración",
    says: (of) =>
      `Ninguna columna da la velocidad, así que se siguió una línea de la vibración como si fuera ${of.order("part", "order")}, entre ${of.bareRoadSpeed("fromKmh")} y ${of.roadSpeed("toKmh")}. Que sea ese orden se supuso y no queda demostrado con ello; donde se fue más despacio o más deprisa, lo que se siguió es otra cosa.`,
    doNext: () => "Registre la velocidad de marcha, o monte un tacómetro, y grabe otra vez antes de desmontar nada.",
  },
} satisfies Partial<FindingCatalogue>;
