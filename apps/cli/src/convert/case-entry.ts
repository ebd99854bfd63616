import type { RecordingSettings } from "@halfturn/casefile";
import { writtenUnit } from "@halfturn/recordings";
import type { WrittenRecording } from "./written-recording.js";

/** What belongs into the case, under recordings, about a file that was written. */
export interface CaseEntry {
  readonly file: string;
  readonly gear?: string;
  readonly pulsesPerTurn?: number;
  readonly filterHz?: number;
  readonly channels?: readonly { readonly id: string; readonly name: string; readonly unit?: string; readonly fullScale?: number }[];
}

/** Tables and universal files name their channels and units themselves; a sound file says nothing. What the case said of the drive stays true. */
export function caseEntry(
  file: string,
  { recording, scales }: WrittenRecording,
  { gear, pulsesPerTurn, filter }: RecordingSettings,
): CaseEntry {
  const channels =
    scales &&
    (recording.tracks[0]?.channels ?? []).map((channel, k) => {
      // A share of full scale is what a sound file holds when nothing is said.
      const { unit, perSi } = channel.quantity === "share" ? { unit: null, perSi: 1 } : writtenUnit(channel);
      const fullScale = (scales[k] as number) * perSi;
      return { id: `channel_${k + 1}`, name: channel.name, ...(unit === null ? {} : { unit }), ...(fullScale === 1 ? {} : { fullScale }) };
    });
  return {
    file,
    ...(gear === undefined ? {} : { gear }),
    ...(pulsesPerTurn === 1 ? {} : { pulsesPerTurn }),
    ...(filter === null ? {} : { filterHz: filter }),
    ...(channels === null ? {} : { channels }),
  };
}
