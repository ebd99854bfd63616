import {
  type AttributionJson,
  attributionToJson,
  type Case,
  complaintRange,
  type PowertrainNote,
  type Problem,
  toAttributionInput,
} from "@halfturn/casefile";
import { type Attribution, type AttributionInput, attribute, type RecordedChannel } from "@halfturn/engine/attribution";
import type { Finding } from "@halfturn/engine/findings";
import { type LongWork, type PausedWork, partOfWork } from "@halfturn/engine/uncertainty";
import { followedSpeed, type HeardQuantity, middleSpeed, type SpeedRange, type SpoolRoom } from "@halfturn/recordings";
import { type Catalogue, problemText, signalFaultText } from "@halfturn/words";
import { BAD_USE, UNANSWERED } from "../program/exit-code.js";
import { pause } from "../program/pause.js";
import { type OpenRoadTest, openRoadTest } from "./open-road-test.js";
import type { Refusal } from "./refusal.js";
import { speedSource } from "./speed-source.js";
import { vibrationChannels } from "./vibration-channels.js";

export interface ListenRequest {
  readonly recording: string;
  readonly document: Case;
  /** What the case is called in a sentence. */
  readonly caseName: string;
  readonly channel?: string | undefined;
  readonly speedFrom?: string | undefined;
  readonly speedFile?: string | undefined;
  readonly gear?: string | undefined;
  /** Where what is long lies while it is worked on; what was heard is read from there until it is closed. */
  readonly room: SpoolRoom;
}

/** What was heard, and what it rests on. */
export interface Heard {
  readonly ok: true;
  readonly json: AttributionJson;
  readonly attribution: Attribution;
  readonly input: AttributionInput;
  readonly names: readonly string[];
  readonly quantities: readonly HeardQuantity[];
  /** The column that told the speed; null where it was followed in the vibration itself. */
  readonly speedColumn: string | null;
  readonly gear: string | null;
  readonly notes: readonly PowertrainNote[];
}

/** Shares of the work: reading the samples, reading the speed. */
const [SAMPLES_READ, SPEED_READ] = [0.3, 0.35];

/** Reads a recording and its speed and lays the vibration to what turned. Rejects with the signal's reason when it is stopped. */
export async function listenTo(request: ListenRequest, words: Catalogue, work: LongWork): Promise<Heard | Refusal> {
  const { document, recording: path, speedFile } = request;
  const opened = await openRoadTest(path, document, words);
  if (!opened.ok) return opened;
  try {
    const other = speedFile === undefined ? opened : await openRoadTest(speedFile, document, words);
    if (!other.ok) return other;
    try {
      return await heard(request, { opened, other }, words, work);
    } finally {
      if (other !== opened) await other.close();
    }
  } finally {
    await opened.close();
  }
}

interface Opened {
  readonly opened: OpenRoadTest;
  /** The file that holds the speed. */
  readonly other: OpenRoadTest;
}

async function heard(request: ListenRequest, { opened, other }: Opened, words: Catalogue, work: LongWork): Promise<Heard | Refusal> {
  const part = (from: number, to: number): PausedWork => partOfWork({ ...work, pause }, from, to);
  // The speed first: without one nothing can be answered, and the samples need not be read.
  const speed = await speedSource(other, request.speedFrom, request.room, words, part(0, SPEED_READ - SAMPLES_READ));
  if (speed !== null && !speed.ok) return speed;
  const range = speed === null ? complaintRange(request.document) : null;
  if (speed === null && range === null) return { ok: false, code: UNANSWERED, lines: [words.terminal.listening.noSpeed(other.path)] };
  const vibration = await vibrationChannels(opened, request.channel, request.room, words, part(SPEED_READ - SAMPLES_READ, SPEED_READ));
  if (!vibration.ok) return vibration;
  const { settings } = opened;
  const gear = request.gear ?? settings.gear;
  const prepared = toAttributionInput(request.document, {
    channels: vibration.channels,
    speed: speed?.source ?? middleSpeed(range as SpeedRange, (vibration.channels[0] as RecordedChannel).samples),
    gear,
    filter: settings.filter,
  });
  if (!prepared.ok)
    return "fault" in prepared
      ? unanswerable(words, prepared.fault, request)
      : problemsOf(prepared.problems, speed?.column ?? "", request, words);
  const circumference = prepared.powertrain.circumference.value;
  const followed = range && (await followedSpeed(prepared.input, circumference, range, part(SPEED_READ, SPEED_READ)));
  if (speed === null && followed === null) return { ok: false, code: UNANSWERED, lines: [words.terminal.listening.noRidge(other.path)] };
  const input = followed === null ? prepared.input : { ...prepared.input, reference: followed.reference };
  const attribution = await attribute(input, part(SPEED_READ, 1));
  if (!attribution.ok) return unanswerable(words, attribution, request);
  const findings = [
    ...(followed === null ? [] : [followed.finding]),
    ...(speed?.findings ?? []),
    ...vibration.findings,
    ...prepared.findings,
  ];
  return {
    ok: true,
    json: withoutDoubt(attributionToJson(attribution.value, { channels: vibration.names, circumference, findings })),
    attribution: attribution.value,
    input,
    names: vibration.names,
    quantities: vibration.quantities,
    speedColumn: speed?.column ?? null,
    gear: prepared.gear,
    notes: prepared.notes,
  };
}

/** Samples of an unknown scale are worked on like a sound; that they are no sound is said by the finding that names the scale. */
function withoutDoubt(json: AttributionJson): AttributionJson {
  const unscaled = json.findings.some(({ code }) => code === "recording.no-full-scale");
  return unscaled ? { ...json, findings: json.findings.filter(({ code }: Finding) => code !== "attribution.sound-only") } : json;
}

function unanswerable(
  { vibration, numbers }: Catalogue,
  fault: Parameters<typeof signalFaultText>[1],
  { recording }: ListenRequest,
): Refusal {
  return { ok: false, code: UNANSWERED, lines: [`${recording}: ${signalFaultText(vibration, fault, numbers)}`] };
}

/** A gear or a tachometer's part that is not there was named on the command line or in the recording; what is merely missing is no bad input. */
function problemsOf(problems: readonly Problem[], column: string, { caseName }: ListenRequest, words: Catalogue): Refusal {
  const lines = problems.map((problem) => {
    if (problem.code === "not-allowed" && problem.path === "")
      return words.terminal.listening.unknownTachometerPart(column, problem.params.got, words.numbers.any(problem.params.allowed));
    if (problem.code === "unknown-reference") return problemText(words, { ...problem, path: "--gear" });
    return `${caseName}: ${problemText(words, problem)}`;
  });
  return { ok: false, code: problems.every(({ code }) => code === "missing") ? UNANSWERED : BAD_USE, lines };
}
