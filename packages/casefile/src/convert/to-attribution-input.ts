import type { AttributionInput, RecordedChannel, ReferenceShaft } from "@halfturn/engine/attribution";
import type { Finding } from "@halfturn/engine/findings";
import { type Powertrain, type RotatingPart, rotatingParts } from "@halfturn/engine/orders";
import { movingStretch, type SignalFault, type SignalResult, shaftAngleFromPulses, shaftAngleFromSpeeds } from "@halfturn/engine/signal";
import { toSi } from "@halfturn/engine/units";
import type { Problem } from "../problems/index.js";
import type { Case } from "../schema/case.js";
import { type PowertrainNote, toPowertrain } from "./to-powertrain.js";

/** How the speed of a recording is known. Times in seconds on the samples' clock. */
export type SpeedSource =
  /** Pulses of a tachometer on a part: `wheel`, `propeller-shaft`, ... */
  | { readonly kind: "pulses"; readonly part: string; readonly times: Float64Array; readonly perTurn: number }
  /** Road speed, m/s; stretches at rest are left out. */
  | { readonly kind: "road-speed"; readonly times: Float64Array; readonly speeds: Float64Array }
  /** Engine speed, rad/s. */
  | { readonly kind: "engine-speed"; readonly times: Float64Array; readonly speeds: Float64Array };

export interface AttributionRequest {
  readonly channels: readonly RecordedChannel[];
  readonly speed: SpeedSource;
  /** Label of the gear driven; the complaint's when left out. */
  readonly gear?: string | undefined;
  /** Hz; see AttributionInput. */
  readonly filter: number | null;
}

export type AttributionInputResult =
  | {
      readonly ok: true;
      readonly input: AttributionInput;
      readonly powertrain: Powertrain;
      readonly gear: string | null;
      readonly notes: readonly PowertrainNote[];
      /** What had to be put right in the pulses, and that the engine is left out where its speed is not known. */
      readonly findings: readonly Finding[];
    }
  | { readonly ok: false; readonly problems: readonly Problem[] }
  | { readonly ok: false; readonly fault: SignalFault };

/** Slower is manoeuvring: 10 km/h. */
const LEAST_SPEED = toSi(10, "km/h");
/** Half widths: a receiver or a speedometer bus against the road, and a bus against the engine (common practice, no source). */
const RECEIVER = 0.005;
const ENGINE_BUS = 0.005;
/** The speed at which a circumference is asked for where no road speed is known: pulses need none. */
const USUAL_SPEED = toSi(80, "km/h");

/** What the engine needs to say which part a vibration follows, from a case, the samples, and how the speed is known. */
export function toAttributionInput(document: Case, { channels, speed, gear, filter }: AttributionRequest): AttributionInputResult {
  const moving = speed.kind === "road-speed" ? movingStretch(speed.times, speed.speeds, LEAST_SPEED) : null;
  const typical = moving && moving.speeds.length > 0 ? (moving.speeds.slice().sort()[moving.speeds.length >> 1] as number) : USUAL_SPEED;
  const found = toPowertrain(document, { gear, speed: typical as typeof USUAL_SPEED });
  if (!found.ok) return found;
  const { powertrain } = found;
  const parts = rotatingParts(powertrain, typical as typeof USUAL_SPEED);
  if (speed.kind === "engine-speed" && powertrain.gearRatio === null) return { ok: false, problems: [gearNeeded(document)] };
  if (speed.kind === "pulses" && !parts.some(({ part }) => part === speed.part))
    return { ok: false, problems: [unknownPart(speed.part, parts)] };
  const reference = referenceOf(speed, parts, powertrain, moving);
  if (!reference.ok) return { ok: false, fault: reference };
  const engineLeftOut: readonly Finding[] =
    powertrain.gearRatio === null ? [{ code: "attribution.engine-left-out", severity: "warn", path: "vehicle.gears", params: {} }] : [];
  return {
    ok: true,
    input: { channels, reference: reference.value.shaft, parts, filter },
    powertrain,
    gear: found.gear,
    notes: found.notes,
    findings: [...reference.value.findings, ...engineLeftOut],
  };
}

interface Reference {
  readonly shaft: ReferenceShaft;
  readonly findings: readonly Finding[];
}

function referenceOf(
  speed: SpeedSource,
  parts: readonly RotatingPart[],
  { circumference, slip }: Powertrain,
  moving: ReturnType<typeof movingStretch> | null,
): SignalResult<Reference> {
  const perWheelTurn = (name: string): number => parts.find(({ part }) => part === name)?.perWheelTurn ?? 1;
  if (speed.kind === "pulses") {
    const slowest = (LEAST_SPEED / circumference.value) * perWheelTurn(speed.part) * speed.perTurn;
    const counted = shaftAngleFromPulses(whileTurning(speed.times, slowest), speed.perTurn);
    if (!counted.ok) return counted;
    const { angle, notes } = counted.value;
    const findings = (["pulses.missing", "pulses.double"] as const).flatMap((code): readonly Finding[] => {
      const count = notes.reduce((sum, note) => (note.code === code ? sum + note.count : sum), 0);
      return count === 0 ? [] : [{ code, severity: "note", path: "", params: { count } }];
    });
    return { ok: true, value: { shaft: { angle, perWheelTurn: perWheelTurn(speed.part), looseness: 0 }, findings } };
  }
  if (speed.kind === "engine-speed") {
    const running = movingStretch(speed.times, speed.speeds, IDLE);
    const angle = shaftAngleFromSpeeds(running.times, running.speeds);
    const shaft = { perWheelTurn: perWheelTurn("engine"), looseness: ENGINE_BUS + slip / 2 };
    return angle.ok ? { ok: true, value: { shaft: { angle: angle.value, ...shaft }, findings: [] } } : angle;
  }
  const road = moving ?? speed;
  const angle = shaftAngleFromSpeeds(
    road.times,
    road.speeds.map((v) => (2 * Math.PI * v) / circumference.value),
  );
  const looseness = (Math.sqrt(3) * circumference.u) / circumference.value + RECEIVER;
  return angle.ok ? { ok: true, value: { shaft: { angle: angle.value, perWheelTurn: 1, looseness }, findings: [] } } : angle;
}

/**
 * The longest stretch of pulses that come at least so many a second: nothing is made up across a standstill. A pulse that is missing looks like half the speed,
 * so none may be missing below twice the least speed.
 */
function whileTurning(times: Float64Array, slowest: number): Float64Array {
  const rates = times.map((time, i) => 1 / ((times[i + 1] ?? Number.NaN) - time));
  if (rates.length > 1) rates[rates.length - 1] = rates.at(-2) as number;
  return movingStretch(times, rates, slowest).times;
}

/** 500 r/min. */
const IDLE = toSi(500, "rpm");

const gearNeeded = ({ vehicle }: Case): Problem =>
  vehicle?.gears === undefined
    ? { code: "missing", path: "vehicle.gears", params: { key: "gears" } }
    : { code: "missing", path: "complaint.gear", params: { key: "gear", allowed: vehicle.gears.map(({ label }) => label) } };

const unknownPart = (got: string, parts: readonly RotatingPart[]): Problem => ({
  code: "not-allowed",
  path: "",
  params: { got, allowed: parts.map(({ part }) => part) },
});
