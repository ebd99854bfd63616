import { type Attribution, attributionSteps } from "@halfturn/engine/attribution";
import { chainState, type Driveline, unevennessOf, wholeChain } from "@halfturn/engine/kinematics";
import type { RotatingPart } from "@halfturn/engine/orders";
import type { RoadTest, VibrationSource } from "@halfturn/engine/simulation";
import type { Deviates } from "@halfturn/engine/uncertainty";
import { degreesToRadians } from "@halfturn/engine/units";
import { finish } from "./finish.js";
import { between, inputOf, pick, plainTest, randomParts, randomProfile } from "./random-road-test.js";

/** A road test with one cause, and what the tool made of it. */
export interface HiddenCause {
  readonly part: string;
  readonly order: number;
  readonly snr: number;
  readonly by: "pulses" | "log";
  readonly result: Attribution;
}

/** RMS of a source's vibration at the middle of a drive: near enough to set the noise by. */
const REFERENCE_RMS = Math.SQRT1_2;

/** Smaller vibrations that any vehicle has: amplitudes against the cause's. */
const USUAL = [
  { part: "wheel", order: 1, share: 0.25 },
  { part: "engine", order: 3, share: 0.3 },
  { part: "engine", order: 2, share: 0.3 },
] as const;

/** One road test of half a minute: a cause drawn at random, what vehicles shake with anyway, noise of -6 to +6 dB against the cause, pulses or a poor log. */
export function hiddenCause(
  seed: number,
  uniform: Deviates,
  vehicle: { readonly axleRatio?: number; readonly gearRatio?: number | null } = {},
  forced?: Cause,
): HiddenCause {
  const { circumference, parts } = randomParts(uniform, vehicle);
  const cause = forced ?? pick(uniform, causesOf(parts));
  const snr = between(uniform, -6, 6);
  const by = pick(uniform, ["pulses", "log"] as const);
  const profile = randomProfile(uniform, 30);
  const turnsAtMiddle = ((profile.speeds[1] ?? 0) / circumference) * (parts.find(({ part }) => part === cause.part)?.perWheelTurn ?? 1);
  const test: RoadTest = {
    ...plainTest(seed, circumference, parts),
    sensor: { rate: pick(uniform, [100, 800, 800]), filter: null, noise: 0.01, offset: 0.05, drift: 0.001, fullScale: null, resolution: 0 },
    profile,
    sources: [sourceOf(cause, uniform, turnsAtMiddle), ...usualBeside(cause, parts, uniform)],
    referenceSpeed: profile.speeds[1] ?? 22,
    roadNoise: REFERENCE_RMS * 10 ** (-snr / 20),
    noiseColour: pick(uniform, ["white", "road"] as const),
    tachometer: by === "pulses" ? { part: pick(uniform, ["propeller-shaft", "wheel"]), perTurn: 1, jitter: 1e-4 } : null,
    log: by === "log" ? { interval: 0.5, lag: 0.6, resolution: 0.1, scale: between(uniform, -0.012, 0.012), noise: 0.05 } : null,
  };
  return { part: cause.part, order: cause.order, snr, by, result: finish(attributionSteps(inputOf(test))) };
}

export interface Cause {
  readonly part: string;
  readonly order: number;
}

export const causesOf = (parts: readonly RotatingPart[]): readonly Cause[] =>
  parts.flatMap(({ part, orders }) =>
    orders.filter(({ order }) => !(part === "propeller-shaft" && order === 4)).map(({ order }) => ({ part, order })),
  );

const JOINTS: Driveline = {
  id: "rear",
  joints: [
    { id: "J1", kind: "cross" },
    { id: "J2", kind: "cross" },
  ],
  sections: [{ id: "shaft", phasing: degreesToRadians(0), phasingMeasured: true }],
};

/** Joint angles shake through the exact motion of a chain that does not cancel; the rest are plain orders, unbalance growing with speed squared. */
function sourceOf(cause: Cause, uniform: Deviates, turnsPerSecond: number): VibrationSource {
  if (cause.part === "propeller-shaft" && cause.order === 2) {
    const pose = (degrees: number) => ({ inclination: degreesToRadians(degrees), heading: degreesToRadians(0) });
    const unevenness = unevennessOf(wholeChain(chainState(JOINTS, [pose(0), pose(between(uniform, 5, 8)), pose(between(uniform, 0, 3))])));
    // As large as the others: the lever makes 4 k w^2 an m/s^2 at the middle of the drive.
    return {
      kind: "joint-angles",
      part: cause.part,
      unevenness,
      lever: 1 / (4 * unevenness * (2 * Math.PI * turnsPerSecond) ** 2),
      gains: [1],
    };
  }
  const speedPower = cause.order === 1 ? 2 : 0;
  return { kind: "harmonic", ...cause, amplitude: 1, speedPower, phase: between(uniform, 0, 6), gains: [1] };
}

const usualBeside = (cause: Cause, parts: readonly RotatingPart[], uniform: Deviates): readonly VibrationSource[] =>
  USUAL.filter(({ part, order }) => {
    const turns = parts.find((one) => one.part === part);
    return !(part === cause.part && order === cause.order) && turns?.orders.some((one) => one.order === order);
  }).map(({ part, order, share }) => ({
    kind: "harmonic",
    part,
    order,
    amplitude: share,
    speedPower: 0,
    phase: between(uniform, 0, 6),
    gains: [1],
  }));

/** Whether the run could part the cause from everything else. */
export const separable = ({ part, order, result }: HiddenCause): boolean =>
  !result.coincidences.some((pair) => [pair.first, pair.second].some((one) => one.part === part && one.order === order));

/** Whether the recording could show the cause at all. */
export const observable = ({ part, order, result }: HiddenCause): boolean =>
  result.contributions.some((one) => one.part === part && one.order === order && one.observable);

/** The order named first, or null where the tool abstained. */
export const named = ({ result }: HiddenCause): string | null => result.verdict && `${result.verdict.part} ${result.verdict.order}`;
