import type { SetUpWords } from "./set-up-words.js";

export const setUp: SetUpWords = {
  opening: "Abriendo el archivo",
  refused: "Este archivo no se puede leer",
  gone: "Cambió o se movió mientras se leía. Ábralo de nuevo.",
  channels: "Canales que escuchar",
  noChannels:
    "Ninguno de sus canales es una aceleración, una velocidad de vibración, un desplazamiento ni un sonido tal como está. Diga abajo qué mide alguno de ellos.",
  clock: (rate, seconds) => `${rate} muestras por segundo, ${seconds}\u00a0s.`,
  even: "Pasos iguales, según el archivo.",
  jitter: (share) => `Medido por las marcas de tiempo, que oscilan un ${share} de un paso.`,
  gaps: (count, seconds) => `Huecos: ${count}, se pierden ${seconds}\u00a0s; se usa el tramo más largo sin huecos.`,
  noGaps: "Sin huecos.",
  reading: (share) => `Leyendo: ${share}`,
  inMemory: {
    "no-files": (limit) =>
      `Este navegador no da a la página archivos propios (ventana privada, HTTP sin cifrar o navegador antiguo): las muestras se guardan en la memoria, ${limit} como máximo entre todos los canales elegidos.`,
    "no-room": (limit) =>
      `En este dispositivo no hay sitio para apartar las muestras: se guardan en la memoria, ${limit} como máximo entre todos los canales elegidos.`,
  },
  inMemoryRefused: {
    "no-files": "Elija menos canales, o abra la aplicación en esta misma máquina o por HTTPS, en una ventana que no sea privada.",
    "no-room": "Libere espacio (8 bytes por muestra) o elija menos canales.",
  },
  scale: "Unidad y fondo de escala de un canal",
  scaleHelp: "Solo si el archivo no lo dice. Sin ello las frecuencias son correctas y las amplitudes son partes del fondo de escala.",
  unit: "Unidad",
  unitUnknown: "no se sabe",
  fullScale: "Fondo de escala en esa unidad",
  fullScaleHelp: "Lo que vale la muestra mayor: en un WAV, su fondo de escala.",
  sensitivity: "Sensibilidad",
  sensitivityHelp: "Lo que da el canal por cada unidad, según la hoja del sensor: 0,1 para 100 mV/g.",
  speed: "De dónde viene la velocidad",
  speedFrom: { constant: "Una velocidad constante", vibration: "La propia vibración" },
  tachometer: (channel) => `${channel} como tacómetro`,
  tachometerOn: "El tacómetro mira",
  perTurn: "Pulsos por vuelta",
  constant: "Se condujo a",
  constantHelp: "Según el velocímetro. Una velocidad grabada dice más.",
  rangeHelp:
    "Nadie apuntó la velocidad: la línea más clara de este margen la sustituye. Estreche el margen cuanto pueda; uno ancho puede dejar abierto el veredicto.",
  slowest: "La menor",
  fastest: "La mayor",
  filter: "Filtro del sensor, Hz (-3\u00a0dB)",
  filterHelp: "De su hoja. Dice que nada por encima de la mitad de la frecuencia de muestreo pudo plegarse.",
  more: "Sensor",
  name: "Nombrar la pieza",
  working: (share) => `Escuchando: ${share}`,
  cancel: "Cancelar",
  lacking: "Aún falta la velocidad.",
};
