import type { AttributionInput } from "@halfturn/engine/attribution";
import { circumferenceAsGiven, type RotatingPart, rotatingParts } from "@halfturn/engine/orders";
import { readerOf, shaftAngleFromPulses, shaftAngleFromSpeeds } from "@halfturn/engine/signal";
import { type RoadTest, type RoadTestRecording, simulateRoadTest } from "@halfturn/engine/simulation";
import type { Deviates } from "@halfturn/engine/uncertainty";
import type { MetresPerSecond } from "@halfturn/engine/units";
import { must } from "./finish.js";

export const between = (uniform: Deviates, low: number, high: number): number => low + (high - low) * uniform();
export const pick = <Item>(uniform: Deviates, items: readonly Item[]): Item => items[Math.floor(uniform() * items.length)] as Item;

/** A vehicle drawn at random: light trucks to heavy ones, in a gear that is direct or not. */
export function randomParts(uniform: Deviates, change: { readonly axleRatio?: number; readonly gearRatio?: number | null } = {}) {
  const circumference = between(uniform, 2.1, 3.3);
  const axleRatio = change.axleRatio ?? between(uniform, 2.6, 4.9);
  const gearRatio = change.gearRatio === undefined ? pick(uniform, [1, 0.62, 0.72, 0.85, 1.35, 1.9]) : change.gearRatio;
  const powertrain = {
    circumference: circumferenceAsGiven(circumference),
    axleRatio,
    transferRatio: 1,
    gearRatio,
    cylinders: pick(uniform, [4, 6]),
    slip: 0,
    accessories: [],
  };
  return { circumference, parts: rotatingParts(powertrain, 25 as MetresPerSecond) };
}

/** A drive that is steady, rises, or rises and falls. */
export function randomProfile(uniform: Deviates, seconds: number): RoadTest["profile"] {
  const v = between(uniform, 17, 27);
  const kind = pick(uniform, ["steady", "rising", "both"] as const);
  const [middle, end] = kind === "steady" ? [v, v] : kind === "rising" ? [1.1 * v, 1.2 * v] : [1.2 * v, 1.02 * v];
  return { times: [0, seconds / 2, seconds], speeds: [v, middle, end] };
}

export const plainTest = (seed: number, circumference: number, parts: readonly RotatingPart[]): Omit<RoadTest, "profile" | "sources"> => ({
  seed,
  parts,
  circumference,
  referenceSpeed: 25,
  roadNoise: 0,
  noiseColour: "white",
  resonance: null,
  sensor: { rate: 500, filter: null, noise: 0, offset: 0.05, drift: 0.001, fullScale: null, resolution: 0 },
  axes: 1,
  log: null,
  tachometer: null,
});

const EMPTY = new Float64Array(0);

/** What the tool gets from a road test: pulses of a part where there are any, else the log, read with the true circumference. */
export function inputOf(test: RoadTest, recording: RoadTestRecording = must(simulateRoadTest(test))): AttributionInput {
  const { channels, pulses, log } = recording;
  const part = test.parts.find((one) => one.part === test.tachometer?.part);
  const reference =
    test.tachometer && part
      ? { angle: must(shaftAngleFromPulses(pulses ?? EMPTY, test.tachometer.perTurn)).angle, perWheelTurn: part.perWheelTurn, looseness: 0 }
      : {
          angle: must(
            shaftAngleFromSpeeds(
              log?.times ?? EMPTY,
              (log?.speeds ?? EMPTY).map((v) => (2 * Math.PI * v) / test.circumference),
            ),
          ),
          perWheelTurn: 1,
          looseness: 0.015,
        };
  return {
    channels: channels.map((signal) => ({ samples: readerOf(signal), quantity: "acceleration", fullScale: test.sensor.fullScale })),
    reference,
    parts: test.parts,
    filter: test.sensor.filter,
  };
}
