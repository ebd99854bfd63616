import { attributionSteps, type RecordedChannel } from "@halfturn/engine/attribution";
import { rotatingParts } from "@halfturn/engine/orders";
import { readerOf } from "@halfturn/engine/signal";
import { simulateRoadTest } from "@halfturn/engine/simulation";
import { toSi } from "@halfturn/engine/units";
import { expect, test } from "vitest";
import { attributionToJson } from "../contract/index.js";
import { exampleCase } from "../example-cases.test-support.js";
import type { Case } from "../schema/case.js";
import { type SpeedSource, toAttributionInput } from "./to-attribution-input.js";
import { toPowertrain } from "./to-powertrain.js";

const twoPiece = exampleCase("two-piece");
const withoutGears = (document: Case): Case => {
  const { gears: _gears, ...vehicle } = document.vehicle ?? {};
  const { complaint: _complaint, ...rest } = document;
  return { ...rest, vehicle };
};

/** A minute on the road in the example's vehicle: its propeller shaft shakes twice a turn. */
function roadTest() {
  const found = toPowertrain(twoPiece, { gear: undefined, speed: toSi(90, "km/h") });
  if (!found.ok) throw new Error("the example has no powertrain");
  const { circumference } = found.powertrain;
  const simulated = simulateRoadTest({
    seed: 3,
    parts: rotatingParts({ ...found.powertrain, gearRatio: null }, toSi(90, "km/h")),
    circumference: circumference.value,
    profile: { times: [0, 10, 40, 60], speeds: [0.5, 20, 29, 26] },
    sources: [{ kind: "harmonic", part: "propeller-shaft", order: 2, amplitude: 0.6, speedPower: 0, phase: 0, gains: [1] }],
    referenceSpeed: 25,
    roadNoise: 0.3,
    noiseColour: "white",
    resonance: null,
    sensor: { rate: 500, filter: null, noise: 0, offset: 0, drift: 0, fullScale: null, resolution: 0 },
    axes: 1,
    log: { interval: 0.5, lag: 0.3, resolution: 0.05, scale: 0.004, noise: 0.02 },
    tachometer: { part: "propeller-shaft", perTurn: 1, jitter: 0 },
  });
  if (!simulated.ok) throw new Error(simulated.code);
  const { channels, log, pulses } = simulated.value;
  const recorded: readonly RecordedChannel[] = channels.map((signal) => ({
    samples: readerOf(signal),
    quantity: "acceleration",
    fullScale: null,
  }));
  return {
    channels: recorded,
    log: log ?? { times: new Float64Array(0), speeds: new Float64Array(0) },
    pulses: pulses ?? new Float64Array(0),
  };
}
const { channels, log, pulses } = roadTest();

const listen = (document: Case, speed: SpeedSource) => {
  const asked = toAttributionInput(document, { channels, speed, filter: null });
  if (!asked.ok) throw new Error(JSON.stringify(asked));
  const steps = attributionSteps(asked.input);
  for (let step = steps.next(); ; step = steps.next()) {
    if (!step.done) continue;
    if (!step.value.ok) throw new Error(step.value.code);
    const context = { channels: ["accel_z_ms2"], circumference: asked.powertrain.circumference.value, findings: asked.findings };
    return { asked, json: attributionToJson(step.value.value, context) };
  }
};

test("the printed contract, key by key and in order", () => {
  const { json } = listen(withoutGears(twoPiece), { kind: "road-speed", ...log });
  expect(Object.keys(json)).toEqual([
    "format",
    "version",
    "durationS",
    "sampleRateHz",
    "wheelTurns",
    "bandHz",
    "channel",
    "speedCorrection",
    "contributions",
    "unexplainedShare",
    "noneProbability",
    "verdict",
    "abstained",
    "coincidences",
    "resonances",
    "findings",
  ]);
  expect(json).toMatchObject({ format: "halfturn-attribution", version: 1, sampleRateHz: 500, channel: "accel_z_ms2", abstained: null });
  expect(json.verdict).toMatchObject({ part: "propeller-shaft", order: 2 });
  const found = json.contributions.find(({ part, order }) => part === "propeller-shaft" && order === 2);
  expect(Object.keys(found ?? {})).toEqual([
    "part",
    "order",
    "frequencyHz",
    "observable",
    "foldsToHz",
    "amplitudeMS2",
    "share",
    "probability",
    "together",
  ]);
  const [low, high] = found?.amplitudeMS2?.interval95 ?? [NaN, NaN];
  expect(low).toBeLessThan(0.6);
  // A followed speed loses a little of an amplitude.
  expect(high).toBeGreaterThan(0.58);
  expect(json.findings.map(({ code }) => code)).toContain("attribution.engine-left-out");
  expect(JSON.parse(JSON.stringify(json))).toEqual(json);
});

test("a road log loses its standstill, and is as loose as the circumference", () => {
  const { asked } = listen(twoPiece, { kind: "road-speed", ...log });
  expect(asked.input.reference.perWheelTurn).toBe(1);
  expect(asked.input.reference.angle.start).toBeGreaterThan(0);
  expect(Math.abs(asked.input.reference.looseness - 0.015)).toBeLessThan(1e-9);
});

test("pulses leave nothing loose, and what was wrong with them is said", () => {
  // One is missed on the way, and the test began with a stop.
  const holed = Float64Array.of(-60, -59.9, -59.8, ...pulses.filter((_, i) => i !== 500));
  const { asked, json } = listen(withoutGears(twoPiece), { kind: "pulses", part: "propeller-shaft", times: holed, perTurn: 1 });
  expect(asked.input.reference).toMatchObject({ perWheelTurn: 3.73, looseness: 0 });
  expect(json.speedCorrection).toBeNull();
  expect(json.findings[0]).toEqual({ code: "pulses.missing", severity: "note", path: "", params: { count: 1 } });
  expect(json.verdict).toMatchObject({ part: "propeller-shaft", order: 2 });
});

test("engine speed needs the gear, and a part that does not turn here is refused", () => {
  const engine = { kind: "engine-speed", times: log.times, speeds: log.speeds.map((v) => 10 * v) } as const;
  expect(toAttributionInput(withoutGears(twoPiece), { channels, speed: engine, filter: null })).toMatchObject({
    ok: false,
    problems: [{ code: "missing", path: "vehicle.gears" }],
  });
  const asked = toAttributionInput(twoPiece, { channels, speed: engine, filter: null });
  expect(asked).toMatchObject({ ok: true, input: { reference: { perWheelTurn: 3.73 } } });
  const pulley = { kind: "pulses", part: "pulley", times: pulses, perTurn: 1 } as const;
  expect(toAttributionInput(twoPiece, { channels, speed: pulley, filter: null })).toMatchObject({
    ok: false,
    problems: [{ code: "not-allowed", params: { got: "pulley" } }],
  });
});

test("a log that never moves is a fault of the speed", () => {
  const still = { kind: "road-speed", times: Float64Array.of(0, 1), speeds: Float64Array.of(0, 0) } as const;
  expect(toAttributionInput(twoPiece, { channels, speed: still, filter: null })).toMatchObject({
    ok: false,
    fault: { code: "shaft-angle.too-few-speeds" },
  });
});
