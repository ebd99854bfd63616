import type { Listening } from "../listening.js";

export const listening: Listening = {
  brief: "Decir a qué pieza que gira sigue una vibración grabada",
  description:
    "Lee la grabación de una prueba en carretera (WAV, una tabla CSV o TSV, o un archivo universal 58; lo reconoce por su contenido) y atribuye su vibración a los órdenes de lo que gira en el vehículo. La velocidad viene de una columna de la grabación o de --speed-file: speed_kmh, engine_rpm, o impulsos de un tacómetro tacho_PIEZA como tacho_propeller_shaft. El fondo de escala, las unidades, los impulsos por vuelta y la marcha de una grabación están en el caso, bajo recordings.\nSalida 0: calculado, sea cual sea el veredicto. 1: no se pudo responder nada. 2: entrada o uso incorrectos. 130: detenido a mano.",
  recordingArgument: "Grabación: WAV, CSV, TSV o UFF",
  flags: {
    case: "Archivo del caso del vehículo; - lee la entrada estándar",
    channel: "Canal con el que trabajar; sin él, todas las aceleraciones",
    speedFrom: "Columna que da la velocidad",
    speedFile: "Archivo que contiene esa columna, si es otro",
    figure: "Imagen de la vibración que escribir, acabada en .svg",
    keep: "Escribir lo que se oyó en el caso, para el informe",
  },
  figureKind: "no acaba en .svg; haga que el nombre de la imagen acabe en .svg",
  progress: (share) => `Escuchando: ${share}`,
  stopped: "Detenido a mano. No se escribió nada.",
  noSpeed: (file) =>
    `${file}: ninguna columna dice a qué velocidad giraba algo; añada una como speed_kmh, engine_rpm o tacho_propeller_shaft, dé un registro con --speed-file, o anote complaint.speedKmh en el caso, para poder seguir la velocidad en la vibración`,
  noRidge: (file) =>
    `${file}: ninguna columna dice a qué velocidad giraba algo, y ningún orden destaca lo bastante dentro de las velocidades de la queja como para seguirla; registre la velocidad, o monte un tacómetro`,
  noRoom: (file, folder, why) =>
    `${file}: es demasiado larga para tenerla en memoria, y la carpeta de archivos temporales, ${folder}, no la admite (${why}); haga sitio en ella, nombre otra carpeta con TMPDIR (TEMP en Windows), o recorte la grabación`,
  theVibration: "la propia vibración",
  speedKind: (column) =>
    `--speed-from: "${column}" no es una velocidad que se pueda usar aquí; tome una velocidad de marcha (speed_kmh), un régimen de motor (engine_rpm) o impulsos (tacho_propeller_shaft)`,
  noVibration: (file, channels) =>
    `${file}: ninguno de sus canales es una vibración ni un sonido (hay: ${channels}); nombre uno con --channel, o dé su unidad bajo recordings en el caso`,
  unknownTachometerPart: (column, part, allowed) =>
    `--speed-from: "${column}" es un tacómetro en "${part}", que no gira en este vehículo; dé a la columna el nombre de ${allowed}`,
  figureWritten: (path) => `${path} escrito.`,
  keepNeedsFile: "--keep: la entrada estándar no se puede reescribir; dé un archivo de caso",
  kept: (path) => `Guardado en ${path}, bajo recordings.`,
  contributions: "A qué sigue la vibración",
  measured: (channels, speed, gear) => `Canales: ${channels}. Velocidad de ${speed}${gear === null ? "" : `, marcha ${gear}`}.`,
  amplitudesIn: (channel) => `Las amplitudes son de ${channel}, la mitad de pico a pico.`,
  turned: (turns, band) => `La rueda dio ${turns} vueltas; las partes son de la vibración hasta ${band}\u00a0Hz.`,
  speedCorrected: (share) => `La velocidad se corrigió en ${share}, para que los órdenes queden donde se oyeron.`,
  with: (orders) => `junto con ${orders}`,
  unseen: "Lo que esta grabación no puede mostrar",
  unseenOrder: (order, from, to) => `${order}: ${from} a ${to}\u00a0Hz`,
  foldsTo: (frequency) => `se vería cerca de ${frequency}\u00a0Hz, si el sensor lo deja pasar`,
  unseenWhy: (band) =>
    `Están por encima de ${band}\u00a0Hz, donde acaba esta frecuencia de muestreo. Que no se oiga nada de ellos no descarta nada.`,
  smaller: (count) => `Aquí se omiten ${count} órdenes menores; --json los da todos.`,
  verdict: "Veredicto",
  noVerdict: "Sin veredicto",
  probabilityMeans:
    "Probabilidad: de que este orden sea el mayor. El ± de la amplitud es la mitad de la anchura del intervalo del 95\u00a0%.",
};
