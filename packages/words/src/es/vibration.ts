import type { VibrationWords } from "../vibration-words.js";

export const vibration: VibrationWords = {
  faults: {
    "signal.too-short": ({ samples, needed }, n) =>
      `La grabación tiene ${n.plain(Number(samples), 0)} muestras junto con la velocidad y hacen falta al menos ${n.plain(Number(needed), 0)}: grabe más tiempo.`,
    "signal.no-samples": () => "En el canal solo hay un mismo valor: mire si se tomó el canal correcto y si el sensor estaba encendido.",
    "signal.lengths-differ": () => "Dos columnas o canales no tienen la misma longitud: tome canales de una misma grabación.",
    "signal.not-finite": () => "Una muestra no es un número: corte la grabación antes o después de ella.",
    "signal.bad-rate": ({ rate }) => `${rate} no es una frecuencia de muestreo: dé las muestras por segundo.`,
    "shaft-angle.too-few-pulses": ({ pulses }, n) =>
      `El tacómetro dio ${n.plain(Number(pulses), 0)} impulsos y hacen falta al menos tres: revise la marca, el sensor y su distancia.`,
    "shaft-angle.times-not-rising": () => "Los tiempos de la velocidad no crecen: mire si se unieron dos registros y dé uno solo.",
    "shaft-angle.too-few-speeds": () => "Un registro de velocidad necesita al menos dos lecturas.",
    "shaft-angle.standstill": ({ time }, n) =>
      `La velocidad es cero${typeof time === "number" ? ` a los ${n.plain(time, 1)}\u00a0s` : ""} y los órdenes necesitan algo que gire: recorte la grabación al tramo en marcha.`,
    "shaft-angle.no-ridge": () =>
      "Ningún orden destaca lo bastante para conocer por él la velocidad: registre la velocidad, monte un tacómetro o estreche el margen de velocidades.",
    "order-tracking.no-whole-turns": () =>
      "La señal y la velocidad no comparten ni un bloque entero de vueltas: mire si sus relojes concuerdan o grabe más tiempo.",
    "attribution.no-orders": ({ limit }, n) =>
      `La grabación no muestra nada por encima de ${n.plain(Number(limit), 0)}\u00a0Hz, donde están todos los órdenes de este vehículo: grabe con un sensor más rápido o circule más despacio. Si se grabó más rápido que eso, sus tiempos no están en segundos: nombre la columna con su unidad, como time_ms.`,
    "attribution.not-turning": () => "El árbol cuya velocidad se conoce no gira: mire la columna de velocidad.",
  },
  comfort: {
    "comfort.not-uncomfortable": "no molesto",
    "comfort.a-little-uncomfortable": "un poco molesto",
    "comfort.fairly-uncomfortable": "bastante molesto",
    "comfort.uncomfortable": "molesto",
    "comfort.very-uncomfortable": "muy molesto",
    "comfort.extremely-uncomfortable": "extremadamente molesto",
  },
  verdict: ({ order, cause, probability, share }) =>
    `La vibración sigue ${order} (por lo común, ${cause}): probabilidad ${probability} entre los órdenes que se pueden ver; explica ${share} de lo grabado.`,
  abstained: {
    coincidence: (orders) => `Es ${orders}: esta grabación no puede decir cuál.`,
    "fold-back": (orders) =>
      `Puede ser ${orders}: un orden por encima de la mitad de la frecuencia de muestreo aparece en una frecuencia falsa, así que no se nombra ninguno.`,
    "loose-speed": (orders) => `Puede ser ${orders}: la velocidad no se conoce lo bastante bien para decir cuál.`,
    several: (orders) => `Más o menos iguales: ${orders}. No se nombra uno solo.`,
    "too-little": (orders) =>
      `El mayor orden hallado es ${orders}, pero no explica casi nada de lo grabado, así que no se nombra como causa.`,
    nothing: () => "Ningún orden destaca del ruido, así que no se nombra ninguna pieza.",
  },
  heading: (seconds, rate) => `${seconds} de vibración, ${rate} muestras por segundo`,
  amplitude: "Amplitud (pico)",
  share: "Parte",
  probability: "Probabilidad",
  frequency: "Frecuencia",
  notObservable: "no se puede ver",
  unexplained: "Sin explicar por ningún orden",
  acceleration: (value) => `${value}\u00a0m/s²`,
};
