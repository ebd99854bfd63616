import type { SourceWords } from "./source-words.js";

export const source: SourceWords = {
  title: "Grabar la vibración",
  help: "Una grabación con la velocidad al lado nombra la pieza. No hace falta si la causa ya está clara.",
  choose: "Abrir un archivo",
  drop: "WAV, CSV, TSV o UFF. También se puede soltar aquí.",
  cautions: "Antes de cualquier prueba en carretera",
  kept: "Grabaciones en este dispositivo",
  keptInCase: "Grabaciones en el caso",
  notHere: "Su archivo no está en este dispositivo.",
  openAgain: "Abrir",
  save: "Guardar como archivo",
  remove: "Borrar",
  removeSure: "Borrar el archivo de este dispositivo",
  removeNo: "Conservarlo",
  notKeptOnDevice: "Este navegador no conserva archivos: guarde la grabación como archivo antes de cerrar la página.",
  phone: {
    title: "Grabar con este dispositivo",
    motion: "Grabar su movimiento",
    sound: "Grabar sonido",
    soundOnly: "El sonido solo dice frecuencias, nunca con qué fuerza vibra algo. La velocidad se escribe después.",
    placeIt:
      "Sujete el dispositivo con firmeza al piso o al raíl del asiento antes de salir: graba aquello sobre lo que está. Lo pone en marcha y lo para un acompañante.",
    withSpeed: "Velocidad del receptor de satélites",
    asking: "El navegador pregunta si esta página puede escuchar: permítalo.",
    stop: "Parar",
    running: (seconds) => `Grabando: ${seconds} s`,
    measured: (rate) => `${rate} muestras por segundo`,
    speedNow: (speed) => `Velocidad ${speed}`,
    noSpeedYet: "El receptor aún no da velocidad",
    denied: "No se permitió al navegador. Permítalo en los ajustes de esta página e inténtelo de nuevo.",
    insecure: "Los navegadores solo dejan grabar a una página por una conexión segura (https, o este mismo equipo).",
    missing:
      "Este dispositivo no tiene sensor de movimiento que un navegador pueda leer. Se puede abrir un archivo de un registrador o de un teléfono.",
    silent: "El sensor no envía nada. Mire si el navegador bloquea los sensores de movimiento en esta página.",
    name: (moment) => `prueba-${moment}`,
  },
};
