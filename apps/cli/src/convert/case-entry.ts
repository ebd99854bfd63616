import type { RecordingSettings } from "@halfturn/casefile";
import type { Channel } from "@halfturn/recordings";
import type { WrittenRecording } from "./written-recording.js";

/** What belongs into the case, under recordings, about a file that was written. */
export interface CaseEntry {
  readonly file: string;
  readonly gear?: string;
  readonly pulsesPerTurn?: number;
  readonly filterHz?: number;
  readonly channels?: readonly { readonly id: string; readonly name: string; readonly unit?: string; readonly fullScale?: number }[];
}

/** Values are written in SI. */
const UNIT: { readonly [Q in Channel["quantity"]]?: string } = {
  acceleration: "m/s^2",
  velocity: "m/s",
  displacement: "m",
  rotation: "rad/s",
  pressure: "Pa",
  voltage: "V",
};

/** Tables and universal files name their channels and units themselves; a sound file says nothing. What the case said of the drive stays true. */
export function caseEntry(
  file: string,
  { recording, scales }: WrittenRecording,
  { gear, pulsesPerTurn, filter }: RecordingSettings,
): CaseEntry {
  const channels =
    scales &&
    (recording.tracks[0]?.channels ?? []).map(({ name, quantity }, k) => {
      const unit = UNIT[quantity];
      const fullScale = scales[k] as number;
      return { id: `channel_${k + 1}`, name, ...(unit === undefined ? {} : { unit }), ...(fullScale === 1 ? {} : { fullScale }) };
    });
  return {
    file,
    ...(gear === undefined ? {} : { gear }),
    ...(pulsesPerTurn === 1 ? {} : { pulsesPerTurn }),
    ...(filter === null ? {} : { filterHz: filter }),
    ...(channels === null ? {} : { channels }),
  };
}
