import type { Numbers } from "../numbers/numbers.js";
import { type CommonPart, coincidenceText, type OrderWords } from "../order-words.js";
import { written } from "../problem-words.js";

const WHOSE: { readonly [P in CommonPart]: string } = {
  wheel: "de la rueda",
  "propeller-shaft": "del árbol de transmisión",
  "transfer-shaft": "del árbol a la transferencia",
  engine: "del motor",
};

const ORDINALS: Readonly<Record<number, string>> = {
  0.5: "medio",
  1: "primer",
  2: "segundo",
  3: "tercer",
  4: "cuarto",
  5: "quinto",
  6: "sexto",
};

const lower = (text: string): string => text.charAt(0).toLowerCase() + text.slice(1);

/** "el primer orden del árbol de transmisión". */
const orderName =
  (numbers: Numbers): OrderWords["orderOf"] =>
  (part, order, accessoryName) => {
    const whose = WHOSE[part as CommonPart] ?? `de ${accessoryName(part)}`;
    const ordinal = ORDINALS[order];
    return ordinal === undefined ? `el orden ${written(order, numbers)} ${whose}` : `el ${ordinal} orden ${whose}`;
  };

export const orders = (numbers: Numbers): OrderWords => {
  const orderOf = orderName(numbers);
  return {
    orderOf,
    parts: { wheel: "Rueda", "propeller-shaft": "Árbol de transmisión", "transfer-shaft": "Árbol a la transferencia", engine: "Motor" },
    causes: {
      "wheel-unbalance-or-runout": "desequilibrio o alabeo",
      "wheel-out-of-round-twice": "neumático ovalado",
      "wheel-out-of-round-thrice": "tres ondas por vuelta",
      "shaft-unbalance-or-runout": "desequilibrio o salto",
      "joint-angles": "ángulos de las juntas",
      "joint-angles-higher": "juntas, armónico",
      "engine-unbalance": "desequilibrio",
      misfire: "un cilindro flojo",
      firing: "explosiones",
      "accessory-unbalance": "desequilibrio",
    },
    heading: (speed, gear) =>
      gear === null ? `Lo que gira a ${speed}, marcha desconocida` : `Lo que gira a ${speed} en la marcha ${gear}`,
    part: "Pieza",
    turnsPerSecond: "Vueltas/s",
    order: "Orden",
    cause: "Causa habitual",
    orders: "Órdenes",
    atSpeeds: (from, to) => `de ${from} a ${to}`,
    inComplaint: (speed, from, to) => `${speed} queda dentro de la queja, de ${from} a ${to}.`,
    outsideComplaint: (speed, from, to) => `${speed} queda fuera de la queja, de ${from} a ${to}.`,
    turnOfWheel: (distance, size) =>
      size === null
        ? `Una vuelta de la rueda avanza ${distance}, dato del caso.`
        : `Una vuelta de la rueda avanza ${distance}, según la medida ${size}; una circunferencia de rodadura medida estrecha cada ±.`,
    coincidences: "Órdenes demasiado próximos para distinguirlos",
    noCoincidences: "Todos los órdenes se pueden distinguir.",
    recordingOf: (turns, seconds, distance) =>
      `En un registro de ${turns} vueltas de rueda a velocidad constante (${seconds}\u00a0s, ${distance} a esta velocidad):`,
    coincidence: coincidenceText(numbers, {
      orderOf,
      apart: (first, second, separation, turns, distance) =>
        `Entre ${lower(first)} y ${second} hay ${separation} órdenes de rueda: solo ${turns} vueltas de rueda a velocidad constante, ${distance}, los separan`,
      another: "otra marcha también los separa",
      sameByGear: (first, second) => `${first} coincide con ${second}: ningún registro los separa, otra marcha sí.`,
      same: (first, second) =>
        `${first} coincide con ${second}: ni un registro ni otra marcha los separan; solo dejar uno de los dos fuera de la prueba.`,
    }),
    notes: {
      "gear-taken": ({ gear, why }) => `La queja no dice la marcha: se toma la ${gear}, ${why === "only" ? "la única" : "la directa"}.`,
      "gear-unknown": ({ gears }, n) =>
        gears.length === 0
          ? "Faltan el motor y lo que mueve: el caso no tiene marchas. Añada vehicle.gears."
          : `Faltan el motor y lo que mueve: no se conoce la marcha. Nombre una: ${n.any(gears)}.`,
      "transfer-ratio-taken": () => "Falta vehicle.transferRatio: se toma 1 para lo que gira por encima de la transferencia.",
    },
  };
};
