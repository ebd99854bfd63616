import { circumferenceAsGiven, type Powertrain, rotatingParts } from "../orders/index.js";
import { readerOf, shaftAngleFromPulses, shaftAngleFromSpeeds } from "../signal/index.js";
import { must } from "../signal/shaft-angle.test-support.js";
import { type HarmonicSource, type RoadTest, simulateRoadTest } from "../simulation/index.js";
import type { MetresPerSecond } from "../units/index.js";
import type { AttributionInput } from "./index.js";

const CIRCUMFERENCE = 2.4;

const powertrain: Powertrain = {
  circumference: circumferenceAsGiven(CIRCUMFERENCE),
  axleRatio: 3.73,
  transferRatio: 1,
  gearRatio: 0.72,
  cylinders: 6,
  slip: 0,
  accessories: [],
};
export const partsOf = (change: Partial<Powertrain> = {}) => rotatingParts({ ...powertrain, ...change }, 25 as MetresPerSecond);

export const shake = (part: string, order: number, amplitude = 1): HarmonicSource => ({
  kind: "harmonic",
  part,
  order,
  amplitude,
  speedPower: 0,
  phase: 0.3,
  gains: [1],
});

export const quietSensor = { rate: 1024, filter: null, noise: 0, offset: 0.1, drift: 0.002, fullScale: null, resolution: 0 } as const;

/** A minute from 72 to 100 km/h and back a little; the propeller shaft's first order shakes with 1 m/s^2. */
const roadTest: RoadTest = {
  seed: 1,
  parts: partsOf(),
  circumference: CIRCUMFERENCE,
  profile: { times: [0, 30, 60], speeds: [20, 28, 25] },
  sources: [shake("propeller-shaft", 1)],
  referenceSpeed: 25,
  roadNoise: 0,
  noiseColour: "white",
  resonance: null,
  sensor: quietSensor,
  axes: 1,
  log: { interval: 0.5, lag: 0.5, resolution: 0.1, scale: 0, noise: 0.03 },
  tachometer: { part: "propeller-shaft", perTurn: 1, jitter: 0 },
};

/** What the road test gives the tool: with the propeller shaft's pulses, or with the speed log alone. */
export function recorded(change: Partial<RoadTest> = {}, by: "pulses" | "log" = "pulses"): AttributionInput {
  const test = { ...roadTest, ...change };
  const { channels, pulses, log } = must(simulateRoadTest(test));
  const reference =
    by === "pulses"
      ? {
          angle: must(shaftAngleFromPulses(pulses ?? new Float64Array(0), 1)).angle,
          perWheelTurn: test.parts.find(({ part }) => part === "propeller-shaft")?.perWheelTurn ?? 1,
          looseness: 0,
        }
      : {
          angle: must(
            shaftAngleFromSpeeds(
              log?.times ?? new Float64Array(0),
              (log?.speeds ?? new Float64Array(0)).map((v) => (2 * Math.PI * v) / CIRCUMFERENCE),
            ),
          ),
          perWheelTurn: 1,
          looseness: 0.025,
        };
  return {
    channels: channels.map((signal) => ({ samples: readerOf(signal), quantity: "acceleration", fullScale: test.sensor.fullScale })),
    reference,
    parts: test.parts,
    filter: test.sensor.filter,
  };
}
