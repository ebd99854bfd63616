import type { TurningWords } from "./turning-words.js";

export const turning: TurningWords = {
  title: "Qué gira a esa velocidad",
  help: "Para esto no hace falta grabar: la velocidad a la que se nota dice qué gira y a qué ritmo.",
  speed: "Se nota a",
  frequency: "Frecuencia en Hz, si se conoce",
  rate: (turns, perMinute) => `${turns} vueltas por segundo, ${perMinute}`,
  order: (order, cause) => `${order} × por vuelta: ${cause}`,
  there: (frequency, speed) => `${frequency} a ${speed} puede ser:`,
  nothingThere: (frequency, speed) => `Nada de lo que gira en este vehículo vibra a ${frequency} a ${speed}.`,
  rings:
    "Puede ser algo que resuena por sí mismo: entonces su frecuencia no cambia con la velocidad. O la velocidad, la frecuencia o la marcha no son las correctas.",
  moves: (speed, frequency) => `A ${speed} sería ${frequency}.`,
  stays:
    "Conduzca un poco más deprisa: una frecuencia que cambia con la velocidad sigue a algo que gira; la que no cambia es algo que resuena por sí mismo.",
  noSpeedParts:
    "Todo está engranado con las ruedas, así que ninguna otra velocidad separa dos órdenes: solo más vueltas de rueda a velocidad constante, u otra marcha.",
};
