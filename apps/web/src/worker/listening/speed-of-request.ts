import { type AttributionRequest, type SpeedSource, toAttributionInput } from "@halfturn/casefile";
import { type AttributionInput, ridgeReference } from "@halfturn/engine/attribution";
import type { Finding, RecordingFault } from "@halfturn/engine/findings";
import { readerOf, type SignalFault, speedFromVibrationSteps, type TimeSignal } from "@halfturn/engine/signal";
import type { LongWork } from "@halfturn/engine/uncertainty";
import { channelPlaces, type Recording, recordedSpeed } from "@halfturn/recordings";
import { inPieces, pause } from "./in-pieces.js";
import type { HearRequest, SpeedChoice } from "./listening-types.js";

/** A speedometer may be out by this share, and a driver wanders off a speed (common practice, no source). */
const TYPED_SHARE = 0.05;
/** Greatest change of road speed while a ridge is followed, m/s^2. */
const ACCELERATION = 1.5;

type Prepared =
  | (Extract<ReturnType<typeof toAttributionInput>, { readonly ok: true }> & { readonly findings: readonly Finding[] })
  | { readonly ok: false; readonly why: "recording"; readonly fault: RecordingFault }
  | { readonly ok: false; readonly why: "signal"; readonly fault: SignalFault }
  | {
      readonly ok: false;
      readonly why: "case";
      readonly problems: Extract<ReturnType<typeof toAttributionInput>, { readonly problems: unknown }>["problems"];
    };

/** What the engine needs: the channels, and the shaft's angle by whatever the speed is known from. */
export async function preparedInput(
  recording: Recording,
  run: TimeSignal,
  channels: AttributionInput["channels"],
  request: HearRequest,
  work: LongWork,
): Promise<Prepared> {
  const { speed, document, gear, filter } = request;
  const basis: Omit<AttributionRequest, "speed"> = { channels, gear, filter };
  if (speed.kind === "column" || speed.kind === "tachometer") {
    const read = await fromColumn(recording, speed, work);
    if (!read.ok) return { ok: false, why: "recording", fault: read };
    const made = toAttributionInput(document, { ...basis, speed: read.value.speed });
    return made.ok ? { ...made, findings: [...read.value.notes, ...made.findings] } : refused(made);
  }
  const made = toAttributionInput(document, {
    ...basis,
    speed: steady(run, speed.kind === "constant" ? speed.speed : (speed.slowest + speed.fastest) / 2),
  });
  if (!made.ok) return refused(made);
  const { reference } = made.input;
  if (speed.kind === "constant") {
    return { ...made, input: { ...made.input, reference: { ...reference, looseness: reference.looseness + TYPED_SHARE } } };
  }
  const perWheelTurn = made.input.parts.find(({ part }) => part === speed.part)?.perWheelTurn ?? 1;
  const { value: circumference, u } = made.powertrain.circumference;
  const toShaft = (2 * Math.PI * perWheelTurn) / circumference;
  // The range is one of road speed; the tyre widens it.
  const widened = 1 + (2 * u) / circumference;
  const range = { slowest: (speed.slowest * toShaft) / widened, fastest: speed.fastest * toShaft * widened };
  const ridge = await inPieces(
    speedFromVibrationSteps(readerOf(run), {
      orders: [speed.order],
      ...range,
      acceleration: ACCELERATION * toShaft,
    }),
    work,
  );
  if (!ridge.ok) return { ok: false, why: "signal", fault: ridge };
  return { ...made, input: { ...made.input, reference: ridgeReference(ridge.value, perWheelTurn, range) } };
}

function fromColumn(recording: Recording, speed: Extract<SpeedChoice, { readonly id: string }>, work: LongWork) {
  const place = channelPlaces(recording).find(({ channel }) => channel.id === speed.id);
  // A programmer's error: the choice was made from the channels of this recording.
  if (!place) throw new RangeError(`no channel ${speed.id}`);
  const tachometer = speed.kind === "tachometer" ? { part: speed.part, perTurn: speed.perTurn } : null;
  return recordedSpeed(recording, place, tachometer, { ...work, pause });
}

/** One speed from before the first sample to after the last. */
function steady({ samples, rate, start }: TimeSignal, speed: number): SpeedSource {
  const end = start + samples.length / rate;
  return { kind: "road-speed", times: Float64Array.of(start - 1, end + 1), speeds: Float64Array.of(speed, speed) };
}

function refused(made: Extract<ReturnType<typeof toAttributionInput>, { readonly ok: false }>): Extract<Prepared, { readonly ok: false }> {
  return "fault" in made ? { ok: false, why: "signal", fault: made.fault } : { ok: false, why: "case", problems: made.problems };
}
