import { type AttributionRequest, toAttributionInput } from "@halfturn/casefile";
import type { AttributionInput } from "@halfturn/engine/attribution";
import type { Finding, RecordingFault } from "@halfturn/engine/findings";
import type { SignalFault } from "@halfturn/engine/signal";
import type { LongWork } from "@halfturn/engine/uncertainty";
import { channelPlaces, followedSpeed, middleSpeed, type Recording, recordedSpeed } from "@halfturn/recordings";
import { pause } from "../pause.js";
import { housed } from "./housed.js";
import type { HearRequest, SpeedChoice } from "./listening-types.js";

/** A speedometer may be out by this share, and a driver wanders off a speed (common practice, no source). */
const TYPED_SHARE = 0.05;
const NO_RIDGE: SignalFault = { ok: false, code: "shaft-angle.no-ridge", path: "samples", params: {} };

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
  channels: AttributionInput["channels"],
  request: HearRequest,
  work: LongWork,
): Promise<Prepared> {
  const { speed, document, gear, filter } = request;
  const [first] = channels;
  // A programmer's error: channels are read before they are listened to.
  if (!first) throw new RangeError("no channel was read");
  const basis: Omit<AttributionRequest, "speed"> = { channels, gear, filter };
  if (speed.kind === "column" || speed.kind === "tachometer") {
    const read = await fromColumn(recording, speed, work);
    if (!read.ok) return { ok: false, why: "recording", fault: read };
    const made = toAttributionInput(document, { ...basis, speed: read.value.speed });
    return made.ok ? { ...made, findings: [...read.value.notes, ...made.findings] } : refused(made);
  }
  const range = speed.kind === "constant" ? { slowest: speed.speed, fastest: speed.speed } : speed;
  const made = toAttributionInput(document, { ...basis, speed: middleSpeed(range, first.samples) });
  if (!made.ok) return refused(made);
  const { reference } = made.input;
  if (speed.kind === "constant") {
    return { ...made, input: { ...made.input, reference: { ...reference, looseness: reference.looseness + TYPED_SHARE } } };
  }
  const followed = await followedSpeed(made.input, made.powertrain.circumference.value, range, { ...work, pause });
  if (followed === null) return { ok: false, why: "signal", fault: NO_RIDGE };
  return { ...made, input: { ...made.input, reference: followed.reference }, findings: [followed.finding, ...made.findings] };
}

async function fromColumn(recording: Recording, speed: Extract<SpeedChoice, { readonly id: string }>, work: LongWork) {
  const place = channelPlaces(recording).find(({ channel }) => channel.id === speed.id);
  // A programmer's error: the choice was made from the channels of this recording.
  if (!place) throw new RangeError(`no channel ${speed.id}`);
  const tachometer = speed.kind === "tachometer" ? { part: speed.part, perTurn: speed.perTurn } : null;
  const { answer, close } = await housed(recording, [place], (room) =>
    recordedSpeed(recording, place, tachometer, { ...work, pause }, room),
  );
  await close();
  return answer;
}

function refused(made: Extract<ReturnType<typeof toAttributionInput>, { readonly ok: false }>): Extract<Prepared, { readonly ok: false }> {
  return "fault" in made ? { ok: false, why: "signal", fault: made.fault } : { ok: false, why: "case", problems: made.problems };
}
