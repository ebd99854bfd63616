import type { RecordingWords } from "../recording-words.js";

const OF = { channels: "canales", sets: "conjuntos de datos", chunks: "bloques", samples: "muestras" } as const;

const CANNOT_HOLD = {
  "several-clocks": "canales con varios relojes; escriba una tabla o un archivo universal, o una pista cada vez",
  "uneven-clock":
    "muestras a intervalos desiguales o con una frecuencia que no es un número entero; escriba una tabla o un archivo universal",
  nothing: "una grabación sin canales; elija al menos uno",
  "missing-values": "muestras sin valor; escriba una tabla",
} as const;

export const recording: RecordingWords = {
  wholeRecording: "la grabación",
  places: { line: "línea", byte: "octeto", channel: "canal", column: "columna", time: "tiempo" },
  faults: {
    "recording.empty": () => "el archivo está vacío; cópielo otra vez del registrador",
    "recording.unknown-format": ({ start }) =>
      `no es una grabación conocida aquí (empieza por "${start}"); dé un WAV, una tabla (CSV, TSV) o un archivo universal (UFF 58)`,
    "recording.truncated": ({ promised, present }, n) =>
      `el archivo está cortado: su cabecera promete ${n.plain(promised, 0)} octetos y hay ${n.plain(present, 0)}; cópielo otra vez del registrador`,
    "recording.part-missing": ({ part }) =>
      `falta la parte "${part}" que va aquí, así que el archivo está roto o cortado; cópielo otra vez del registrador`,
    "recording.header-contradicts": ({ field, got, expected }) =>
      `la cabecera se contradice o contradice al archivo: "${field}" es ${got} y tendría que ser ${expected}; exporte la grabación otra vez`,
    "recording.encoding-unsupported": ({ encoding }) =>
      `aquí no se leen muestras o texto escritos como ${encoding}; exporte como PCM (16, 24 o 32 bits), como coma flotante, o como tabla en UTF-8`,
    "recording.no-samples": () => "no contiene ninguna muestra; grabe otra vez, o mire si se tomó el archivo correcto",
    "recording.no-time": ({ columns }) =>
      `ninguna columna es un tiempo (hay: ${columns}); nombre la columna de tiempos con su unidad, como time_s o time_ms`,
    "recording.no-column-names": () =>
      "ninguna línea encima de los números nombra las columnas; añada una, como time_s,accel_z_ms2,speed_kmh, con tantos nombres como columnas",
    "recording.columns-differ": ({ got, expected }, n) =>
      `esta línea tiene ${n.plain(got, 0)} celdas y los nombres de encima son ${n.plain(expected, 0)}; corrija o quite la línea`,
    "recording.not-a-number": ({ column, found }) =>
      `"${found}" en la columna "${column}" no es un número; corríjalo, o deje la celda vacía donde no hubo valor`,
    "recording.line-too-long": ({ limit }, n) =>
      `la línea pasa de ${n.plain(limit, 0)} octetos, así que difícilmente es una tabla de lecturas; mire si se tomó el archivo correcto`,
    "recording.time-backwards": ({ sample, time, before }, n) =>
      `el tiempo retrocede en la muestra ${n.plain(sample, 0)}: ${n.plain(time, 6)}\u00a0s viene después de ${n.plain(before, 6)}\u00a0s; mire si se unieron dos grabaciones, y dé una de ellas`,
    "recording.too-few-samples": ({ samples, needed }, n) =>
      `${n.plain(samples, 0)} muestras con tiempo y valor son pocas para trabajar; hacen falta ${n.plain(needed, 0)} como mínimo, y son útiles algunas decenas de segundos`,
    "recording.no-steady-rate": ({ gaps, samples }, n) =>
      `ninguna frecuencia de muestreo constante encaja con los tiempos (${n.plain(gaps, 0)} huecos en ${n.plain(samples, 0)} muestras); grabe a frecuencia fija, sin nada más en marcha en el aparato`,
    "recording.no-time-signal": ({ sets }, n) =>
      `ninguno de sus ${n.plain(sets, 0)} conjuntos de datos 58 es función del tiempo; exporte la señal en el tiempo, no un espectro`,
    "recording.too-many": ({ of, limit }, n) => `tiene más de ${n.plain(limit, 0)} ${OF[of]}, más de lo que se lee; divídala`,
    "recording.channel-unknown": ({ got, allowed }) => `no hay ningún canal "${got}"; hay: ${allowed}`,
    "recording.unit-unknown": ({ channel, unit }) =>
      `la unidad "${unit}" de "${channel}" no se conoce; escriba una como m/s^2, g, km/h, rpm o V`,
    "recording.unit-of-another-kind": ({ channel, got, expected }) =>
      `"${channel}" es ${got} y tendría que ser ${expected}; elija otro canal, o dé su unidad en el caso`,
    "recording.cannot-hold": ({ format, what }) => `${format} no puede contener ${CANNOT_HOLD[what]}`,
  },
};
