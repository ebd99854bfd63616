import type { Numbers } from "../numbers/numbers.js";
import { type CommonPart, coincidenceText, type OrderWords } from "../order-words.js";
import { written } from "../problem-words.js";

const WHOSE: { readonly [P in CommonPart]: string } = {
  wheel: "the wheel's",
  "propeller-shaft": "the propeller shaft's",
  "transfer-shaft": "the transfer shaft's",
  engine: "the engine's",
};

const ORDINALS: Readonly<Record<number, string>> = {
  0.5: "half",
  1: "first",
  2: "second",
  3: "third",
  4: "fourth",
  5: "fifth",
  6: "sixth",
};

/** "the propeller shaft's first order". */
const orderName =
  (numbers: Numbers): OrderWords["orderOf"] =>
  (part, order, accessoryName) => {
    const whose = WHOSE[part as CommonPart] ?? `${accessoryName(part)}'s`;
    const ordinal = ORDINALS[order];
    return ordinal === undefined ? `${whose} order ${written(order, numbers)}` : `${whose} ${ordinal} order`;
  };

export const orders = (numbers: Numbers): OrderWords => {
  const orderOf = orderName(numbers);
  return {
    orderOf,
    parts: { wheel: "Wheel", "propeller-shaft": "Propeller shaft", "transfer-shaft": "Transfer shaft", engine: "Engine" },
    causes: {
      "wheel-unbalance-or-runout": "unbalance or runout",
      "wheel-out-of-round-twice": "tyre oval, twice a turn",
      "wheel-out-of-round-thrice": "out of round, three times",
      "shaft-unbalance-or-runout": "unbalance or runout",
      "joint-angles": "joint angles",
      "joint-angles-higher": "joint angles, harmonic",
      "engine-unbalance": "unbalance",
      misfire: "one weak cylinder",
      firing: "firing",
      "accessory-unbalance": "unbalance",
    },
    heading: (speed, gear) => (gear === null ? `Turning at ${speed}, gear not known` : `Turning at ${speed} in gear ${gear}`),
    part: "Part",
    turnsPerSecond: "Turns/s",
    order: "Order",
    cause: "Usual cause",
    orders: "Orders",
    atSpeeds: (from, to) => `at ${from} to ${to}`,
    inComplaint: (speed, from, to) => `${speed} lies within the complaint, ${from} to ${to}.`,
    outsideComplaint: (speed, from, to) => `${speed} lies outside the complaint, ${from} to ${to}.`,
    turnOfWheel: (distance, size) =>
      size === null
        ? `One turn of the wheel goes ${distance}, as given.`
        : `One turn of the wheel goes ${distance}, from the size ${size}; a measured rolling circumference narrows every ±.`,
    coincidences: "Orders too close to tell apart",
    noCoincidences: "All orders can be told apart.",
    recordingOf: (turns, seconds, distance) =>
      `In a recording of ${turns} turns of the wheel at steady speed (${seconds}\u00a0s, ${distance} at this speed):`,
    coincidence: coincidenceText(numbers, {
      orderOf,
      apart: (first, second, separation, turns, distance) =>
        `${first} lies ${separation} of a wheel order from ${second}: only ${turns} turns of the wheel at steady speed, ${distance}, part them`,
      another: "another gear parts them too",
      sameByGear: (first, second) => `${first} is the same as ${second}: no recording parts them, another gear does.`,
      same: (first, second) =>
        `${first} is the same as ${second}: neither a recording nor a gear parts them; only taking one of the two out of the test does.`,
    }),
    notes: {
      "gear-taken": ({ gear, why }) =>
        `No gear is given with the complaint: gear ${gear} is taken, ${why === "only" ? "the only one" : "the direct one"}.`,
      "gear-unknown": ({ gears }, n) =>
        gears.length === 0
          ? "The engine and what it drives are left out: the case lists no gears. Add vehicle.gears."
          : `The engine and what it drives are left out: the gear is not known. Name one of ${n.any(gears)}.`,
      "transfer-ratio-taken": () => "vehicle.transferRatio is not given: 1 is taken for what turns above the transfer case.",
    },
  };
};
