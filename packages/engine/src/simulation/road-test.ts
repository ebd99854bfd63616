import type { RotatingPart } from "../orders/index.js";
import type { ShaftAngle, SignalResult, TimeSignal } from "../signal/index.js";
import { signalValue } from "../signal/signal-fault.js";
import { normalDeviates, uniformDeviates } from "../uncertainty/index.js";
import { torsionalAcceleration } from "./joint-torsion.js";
import { filterGain, type Sensor, sensed } from "./sensor.js";
import { driveOf, loggedSpeeds, type SpeedLog, type SpeedProfile } from "./speed-profile.js";
import { pulseTimes, type Tachometer } from "./tachometer.js";
import { type HarmonicSource, type Resonance, resonantGain, type VibrationSource } from "./vibration-source.js";

/** A road test to be made up. */
export interface RoadTest {
  readonly seed: number;
  /** From rotatingParts: only their turns per wheel turn count. */
  readonly parts: readonly RotatingPart[];
  /** Metres per turn of the wheel. */
  readonly circumference: number;
  readonly profile: SpeedProfile;
  readonly sources: readonly VibrationSource[];
  /** Speed in m/s at which the amplitudes of harmonic sources are meant. */
  readonly referenceSpeed: number;
  /** RMS of the road's noise, m/s^2, over 0 to half the rate. */
  readonly roadNoise: number;
  /** white: even; road: falls with frequency above some 5 Hz, as a body's does (common practice, no source). */
  readonly noiseColour: "white" | "road";
  readonly resonance: Resonance | null;
  readonly sensor: Sensor;
  readonly axes: number;
  readonly log: SpeedLog | null;
  readonly tachometer: (Tachometer & { readonly part: string }) | null;
}

/** What the road test recorded, and what nobody on the road knows. */
export interface RoadTestRecording {
  /** One per axis, m/s^2. */
  readonly channels: readonly TimeSignal[];
  readonly log: { readonly times: Float64Array; readonly speeds: Float64Array } | null;
  readonly pulses: Float64Array | null;
  /** The wheel's true angle. */
  readonly wheel: ShaftAngle;
}

/** Corner of the road's noise, Hz. */
const ROAD_CORNER = 5;

/**
 * Makes up a road test: every source at its part's angle, through a resonance and the sensor, with noise. Same input, same numbers.
 * Gains of resonance and filter are those of the steady state at each moment's frequency, which holds where speed changes little within one decay.
 * A source whose part does not turn on this vehicle is a programmer's error and throws RangeError. Faults as shaftAngleFromSpeeds.
 */
export function simulateRoadTest(test: RoadTest): SignalResult<RoadTestRecording> {
  const drive = driveOf(test.profile);
  if (!drive.ok) return drive;
  const road = drive.value;
  const uniform = uniformDeviates(test.seed);
  const normal = normalDeviates(uniform);
  const { rate } = test.sensor;
  const count = Math.floor((road.end - road.start) * rate) + 1;
  const axes = Array.from({ length: test.axes }, () => new Float64Array(count));
  const wheelPerMetre = (2 * Math.PI) / test.circumference;
  const voices = test.sources.map((source) => voiceOf(source, test));
  for (let n = 0; n < count; n++) {
    const time = road.start + n / rate;
    const [turned, speed] = [road.angleAt(time) * wheelPerMetre, road.speedAt(time)];
    for (const { source, value } of voices) {
      const x = value(turned, speed, time);
      for (const [axis, out] of axes.entries()) out[n] = (out[n] as number) + x * (source.gains[axis] ?? 0);
    }
  }
  for (const out of axes) {
    addNoise(out, test.roadNoise, test.noiseColour, rate, normal);
    if (test.resonance !== null && test.resonance.roadRms > 0) addRinging(out, test.resonance, rate, normal);
    for (let n = 0; n < count; n++) out[n] = sensed(test.sensor, (out[n] as number) + test.sensor.noise * normal(), n / rate);
  }
  const { tachometer } = test;
  return signalValue({
    channels: axes.map((samples) => ({ samples, rate, start: road.start })),
    log: test.log && loggedSpeeds(road, test.log, uniform),
    pulses: tachometer && pulseTimes(road, wheelPerMetre * perWheelTurn(test, tachometer.part), tachometer, uniform),
    wheel: scaledAngle(road, wheelPerMetre),
  });
}

function perWheelTurn({ parts }: RoadTest, name: string): number {
  const part = parts.find((other) => other.part === name);
  // A programmer's error: sources and parts are made together.
  if (part === undefined) throw new RangeError(`no part ${name} turns here`);
  return part.perWheelTurn;
}

interface Voice {
  readonly source: VibrationSource;
  /** From the wheel's angle in rad and the road speed in m/s. */
  readonly value: (turned: number, speed: number, time: number) => number;
}

function voiceOf(source: VibrationSource, test: RoadTest): Voice {
  const ratio = perWheelTurn(test, source.part);
  const turnsPerMetre = ratio / test.circumference;
  const through = (frequency: number): { readonly gain: number; readonly shift: number } => {
    const { gain, shift } = test.resonance === null ? { gain: 1, shift: 0 } : resonantGain(test.resonance, frequency);
    return { gain: gain * filterGain(test.sensor, frequency), shift };
  };
  if (source.kind === "harmonic") {
    const { order, amplitude, speedPower, phase, ahead } = source;
    const slipped = ahead === undefined ? () => 0 : slippedAngle(ahead);
    return {
      source,
      value: (turned, speed, time) => {
        const { gain, shift } = through(order * turnsPerMetre * speed);
        const size = amplitude * (speedPower === 0 ? 1 : (speed / test.referenceSpeed) ** speedPower);
        return size * gain * Math.cos(order * ratio * (turned + slipped(turned, time)) + phase + shift);
      },
    };
  }
  return {
    source,
    value: (turned, speed) => {
      const { gain, shift } = through(2 * turnsPerMetre * speed);
      const spin = 2 * Math.PI * turnsPerMetre * speed;
      return source.lever * gain * spin ** 2 * torsionalAcceleration(source.unevenness, ratio * turned + shift / 2);
    },
  };
}

/** What a share that changes with time has added to an angle, rad of the wheel, asked along the run; from where the run begins. */
function slippedAngle({ times, shares }: NonNullable<HarmonicSource["ahead"]>): (turned: number, time: number) => number {
  let [before, added, next] = [0, 0, 1];
  return (turned, time) => {
    while (next < times.length - 1 && time > (times[next] as number)) next++;
    const [from, to] = [times[next - 1] as number, times[next] as number];
    const place = Math.min(1, Math.max(0, (time - from) / (to - from)));
    added += ((shares[next - 1] as number) * (1 - place) + (shares[next] as number) * place) * (turned - before);
    before = turned;
    return added;
  };
}

function addNoise(out: Float64Array, rms: number, colour: RoadTest["noiseColour"], rate: number, normal: () => number): void {
  if (rms === 0) return;
  // A first-order filter of white noise: x = p x + (1 - p) w has the variance (1 - p) / (1 + p).
  const p = colour === "white" ? 0 : Math.exp((-2 * Math.PI * ROAD_CORNER) / rate);
  const scale = rms / Math.sqrt((1 - p) / (1 + p));
  let x = 0;
  for (let n = 0; n < out.length; n++) {
    x = p * x + (1 - p) * normal();
    out[n] = (out[n] as number) + scale * x;
  }
}

/** White noise through a resonator of two poles, brought to the wanted RMS over the run. */
function addRinging(out: Float64Array, { frequency, damping, roadRms }: Resonance, rate: number, normal: () => number): void {
  const decay = Math.exp((-2 * Math.PI * frequency * damping) / rate);
  const turn = (2 * Math.PI * frequency * Math.sqrt(1 - damping ** 2)) / rate;
  const ringing = new Float64Array(out.length);
  let [before, last, squares] = [0, 0, 0];
  for (let n = 0; n < out.length; n++) {
    const x = 2 * decay * Math.cos(turn) * last - decay ** 2 * before + normal();
    [before, last] = [last, x];
    ringing[n] = x;
    squares += x * x;
  }
  const scale = roadRms / Math.sqrt(squares / out.length);
  for (let n = 0; n < out.length; n++) out[n] = (out[n] as number) + scale * (ringing[n] as number);
}

/** An angle times a factor. */
function scaledAngle(angle: ShaftAngle, factor: number): ShaftAngle {
  return {
    start: angle.start,
    end: angle.end,
    total: angle.total * factor,
    angleAt: (time) => angle.angleAt(time) * factor,
    speedAt: (time) => angle.speedAt(time) * factor,
    timeOf: (wanted) => angle.timeOf(wanted / factor),
  };
}
