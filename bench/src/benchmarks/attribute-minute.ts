import { attributionSteps } from "@halfturn/engine/attribution";
import { circumferenceAsGiven, rotatingParts } from "@halfturn/engine/orders";
import { readerOf, shaftAngleFromSpeeds } from "@halfturn/engine/signal";
import { simulateRoadTest } from "@halfturn/engine/simulation";
import type { MetresPerSecond } from "@halfturn/engine/units";
import type { Benchmark } from "../benchmark.js";

const CIRCUMFERENCE = 2.42;

/** What a phone or a small logger hands over: a speed log that is followed in the vibration, then all orders together. */
export const attributeMinute: Benchmark = {
  name: "attribute-minute",
  what: "attribution of a minute, 3 axes at 1,024 Hz, speed from a poor log",
  prepare: () => {
    const parts = rotatingParts(
      {
        circumference: circumferenceAsGiven(CIRCUMFERENCE),
        axleRatio: 3.73,
        transferRatio: 1,
        gearRatio: 0.72,
        cylinders: 6,
        slip: 0,
        accessories: [],
      },
      25 as MetresPerSecond,
    );
    const made = simulateRoadTest({
      seed: 1,
      parts,
      circumference: CIRCUMFERENCE,
      profile: { times: [0, 30, 60], speeds: [21, 27, 24] },
      sources: [{ kind: "harmonic", part: "propeller-shaft", order: 1, amplitude: 0.5, speedPower: 2, phase: 0, gains: [0.3, 0.5, 1] }],
      referenceSpeed: 25,
      roadNoise: 0.6,
      noiseColour: "road",
      resonance: null,
      sensor: { rate: 1024, filter: null, noise: 0.05, offset: 0, drift: 0, fullScale: null, resolution: 0 },
      axes: 3,
      log: { interval: 1, lag: 0.7, resolution: 0.28, scale: 0.005, noise: 0.05 },
      tachometer: null,
    });
    if (!made.ok || made.value.log === null) throw new Error("a road test that cannot be made");
    const { log, channels } = made.value;
    const angle = shaftAngleFromSpeeds(
      log.times,
      log.speeds.map((v) => (2 * Math.PI * v) / CIRCUMFERENCE),
    );
    if (!angle.ok) throw new Error(angle.code);
    return () => {
      const steps = attributionSteps({
        channels: channels.map((signal) => ({ samples: readerOf(signal), quantity: "acceleration", fullScale: null })),
        reference: { angle: angle.value, perWheelTurn: 1, looseness: 0.015 },
        parts,
        filter: null,
      });
      for (let step = steps.next(); ; step = steps.next())
        if (step.done) return step.value.ok ? (step.value.value.verdict?.probability ?? Number.NaN) : Number.NaN;
    };
  },
};
