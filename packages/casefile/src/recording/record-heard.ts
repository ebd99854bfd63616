import type { AttributionJson } from "../contract/attribution-contract.js";
import { toRecordingSettings } from "../convert/to-recording-settings.js";
import type { Case, CaseRecording } from "../schema/case.js";

/** Stands for the column where the speed was followed in the vibration itself. */
export const FOLLOWED_SPEED = "vibration";

/** What is put on record of a recording that was listened to. */
export interface HeardRecording {
  /** The recording's file, as it was named. */
  readonly file: string;
  readonly json: AttributionJson;
  /** The column that told the speed, or FOLLOWED_SPEED. */
  readonly speedFrom: string;
  /** The gear that was taken; null where it is not known. */
  readonly gear: string | null;
}

/** The case with what was heard written beside its recording, all else as it was; a recording that the case does not know yet is added. `date`: ISO 8601, handed in. */
export function recordHeard(document: Case, heard: HeardRecording, date: string): Case {
  const { index } = toRecordingSettings(document, heard.file);
  const before = document.recordings ?? [];
  const entry = toEntry(heard, date);
  const recordings: readonly CaseRecording[] =
    index === null
      ? [...before, { file: heard.file, heard: entry }]
      : before.map((recording, k) => (k === index ? { ...recording, heard: { ...recording.heard, ...entry } } : recording));
  return { ...document, updatedAt: date, recordings: [...recordings] };
}

function toEntry({ json, speedFrom, gear }: HeardRecording, at: string): NonNullable<CaseRecording["heard"]> {
  const { durationS, sampleRateHz, bandHz, channel, verdict, abstained, unexplainedShare } = json;
  return {
    at,
    durationS,
    sampleRateHz,
    bandHz,
    channel,
    speedFrom,
    ...(gear === null ? {} : { gear }),
    verdict: verdict && { ...verdict },
    abstained: abstained && { reason: abstained.reason, between: abstained.between.map((one) => ({ ...one })) },
    contributions: json.contributions.map(({ part, order, frequencyHz, observable, amplitudeMS2, share, probability }) => ({
      part,
      order,
      frequencyHz: [...frequencyHz],
      observable,
      amplitudeMS2: amplitudeMS2 && { value: amplitudeMS2.value, u: amplitudeMS2.u, interval95: [...amplitudeMS2.interval95] },
      share,
      probability,
    })),
    unexplainedShare,
  };
}
