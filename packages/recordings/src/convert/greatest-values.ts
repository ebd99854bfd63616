import type { PausedWork } from "@halfturn/engine/uncertainty";
import type { Recording } from "../recording.js";
import { type RecordingResult, recordingValue } from "../recording-result.js";

/** Greatest |value| of every channel of a track, in SI; 0 where it has none. Faults of the reader. */
export async function greatestValues(
  recording: Recording,
  track: number,
  work: PausedWork = {},
): Promise<RecordingResult<readonly number[]>> {
  const channels = recording.tracks[track]?.channels ?? [];
  const greatest = channels.map(() => 0);
  for await (const block of recording.read({ track, channels: channels.map((_, k) => k) }, work)) {
    if (!block.ok) return block;
    for (const [k, values] of block.value.values.entries())
      for (const value of values) if (Math.abs(value) > (greatest[k] as number)) greatest[k] = Math.abs(value);
    await work.pause?.();
  }
  return recordingValue(greatest);
}

/** The least of 1, 2 and 5 times a power of ten that is no less than a value; 1 for 0. */
export function roundedUp(value: number): number {
  if (!(value > 0)) return 1;
  const power = 10 ** Math.floor(Math.log10(value));
  return ([1, 2, 5].find((step) => step * power >= value) ?? 10) * power;
}
