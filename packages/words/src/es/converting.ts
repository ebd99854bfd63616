import type { Converting } from "../converting.js";

export const converting: Converting = {
  brief: "Escribir una grabación en otro formato",
  description:
    "Lee una grabación (WAV, CSV, TSV o archivo universal, reconocida por su contenido) y la escribe como dice el final de --output: .wav, .csv, .tsv o .uff. Los valores se escriben en el SI, y las velocidades y desplazamientos de vibración en mm/s y mm; los tiempos quedan como están. Los nombres, unidades y fondos de escala que la grabación no dice vienen de --case. Un archivo de sonido solo admite muestras a pasos iguales: las demás se ponen antes a pasos iguales, como hace listen, y de varios tramos se toma el más largo. Se imprime lo que el caso ha de decir entonces del archivo de sonido. Un archivo que ya existe no se toca sin --force.\nSalida 0: escrito. 1: sin sitio para trabajar. 2: entrada o uso incorrectos. 130: detenido a mano.",
  flags: {
    output: "Archivo por escribir: .wav, .csv, .tsv o .uff",
    case: "Caso que dice unidades y fondos de escala",
    channel: "Canal por escribir (repetible); todos si se omite",
    from: "Segundos desde la primera muestra para empezar",
    to: "Segundos desde la primera muestra para acabar",
    encoding: "Muestras de un WAV (pcm24 si se omite) o UFF (text)",
    fullScale: "Fondo de escala de la vibración en un WAV, m/s^2 o Pa",
    decimal: "Signo decimal de una tabla",
  },
  outputKind: "no dice qué formato escribir; que el nombre acabe en .wav, .csv, .tsv o .uff",
  seconds: "no es un número de segundos desde 0; escriba uno como 12.5",
  aboveZero: "no es un número mayor que 0; escriba uno como 20",
  progress: (share) => `Convirtiendo: ${share}`,
  encodingUnfit: (encoding, kind, allowed) => `--encoding: un ${kind} no se escribe como ${encoding}; escriba ${allowed}`,
  fullScaleUnfit: "--full-scale: solo un WAV tiene fondo de escala; omítalo, o que --output acabe en .wav",
  decimalUnfit: "--decimal: solo una tabla tiene signo decimal; omítalo, o que --output acabe en .csv o .tsv",
  stretchEmpty: "--to: el tramo acaba antes de empezar; que --to sea mayor que --from",
  outside: (file) =>
    `${file}: de uno de los canales no hay ninguna muestra entre --from y --to, que cuentan segundos desde la primera; tome un tramo más largo, u otros canales con --channel`,
  tooLarge: (channel, reaches, fullScale) =>
    `--full-scale: "${channel}" llega a ${reaches}, que es más que ${fullScale}; dé uno mayor, omítalo, o escriba --encoding float32`,
  written: (path, channels) => `${path} escrito: ${channels}.`,
  entry: "Un archivo de sonido no dice nombres ni unidades. En el caso, en recordings:",
  startLost: (seconds) =>
    `La primera muestra se tomó a los ${seconds}\u00a0s, y un archivo de sonido empieza en 0: desplace otro tanto un registro de velocidad aparte, o escriba una tabla.`,
};
