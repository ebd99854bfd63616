import type { ScaledChannel } from "../channels/channel-scale.js";
import type { Track } from "../recording.js";
import { type RecordingResult, recordingFault, recordingValue } from "../recording-result.js";

/** One clock of a table: its time column and the columns that are read by it. */
export interface TableTrack {
  readonly timeColumn: number;
  /** What a time of that column is multiplied by to be seconds. */
  readonly timeFactor: number;
  readonly columns: readonly number[];
  readonly track: Track;
}

/** A time column is the clock of the columns to its right, up to the next; those left of the first are read by the first. */
export function tableTracks(channels: readonly ScaledChannel[]): RecordingResult<readonly TableTrack[]> {
  const times = channels.flatMap(({ channel }, column) => (channel.quantity === "time" ? [column] : []));
  const ids = channels.map(({ channel }) => channel.id).join(", ");
  if (times.length === 0) return recordingFault("recording.no-time", "", { columns: ids });
  const clockOf = (column: number): number => times.findLast((time) => time < column) ?? (times[0] as number);
  const tracks = times.map((timeColumn): TableTrack => {
    const columns = channels.flatMap((_, column) => (!times.includes(column) && clockOf(column) === timeColumn ? [column] : []));
    return {
      timeColumn,
      timeFactor: (channels[timeColumn] as ScaledChannel).factor,
      columns,
      track: { clock: { kind: "stamped", count: null }, channels: columns.map((column) => (channels[column] as ScaledChannel).channel) },
    };
  });
  const filled = tracks.filter(({ columns }) => columns.length > 0);
  return filled.length === 0 ? recordingFault("recording.no-samples", "", {}) : recordingValue(filled);
}
