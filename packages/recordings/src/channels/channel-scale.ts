import type { Channel } from "../recording.js";
import { type RecordingResult, recordingFault, recordingValue } from "../recording-result.js";
import { type ColumnName, columnName, unitFor } from "./column-name.js";

/** What a person knows of a channel that its file does not say: value = raw x fullScale / sensitivity, in `unit`. */
export interface ChannelScale {
  /** The file's name of it. */
  readonly id: string;
  /** What it is called instead; may carry a unit, or `tacho_PART`. */
  readonly name?: string | undefined;
  readonly unit?: string | undefined;
  /** What a raw 1 stands for: of a WAV, its full scale. Above 0. */
  readonly fullScale?: number | undefined;
  /** Raw units per unit, as a sensor's sheet says (V per g). Above 0. */
  readonly sensitivity?: number | undefined;
}

/** A channel and what its raw values are multiplied by. */
export interface ScaledChannel {
  readonly channel: Channel;
  readonly factor: number;
}

/** A file's columns with what is known of them. Faults: a scale for a channel that is not there, a unit that is not known. */
export function scaledChannels(columns: readonly ColumnName[], scales: readonly ChannelScale[]): RecordingResult<readonly ScaledChannel[]> {
  const stray = scales.find(({ id }) => !columns.some((column) => column.id === id));
  if (stray !== undefined) {
    return recordingFault("recording.channel-unknown", `channel ${stray.id}`, {
      got: stray.id,
      allowed: columns.map(({ id }) => id).join(", "),
    });
  }
  const scaled: ScaledChannel[] = [];
  for (const column of columns) {
    const one = scaledChannel(
      column,
      scales.find(({ id }) => id === column.id),
    );
    if (!one.ok) return one;
    scaled.push(one.value);
  }
  return recordingValue(scaled);
}

function scaledChannel(column: ColumnName, scale: ChannelScale | undefined): RecordingResult<ScaledChannel> {
  const renamed = scale?.name === undefined ? column : { ...renamedAs(column, scale.name), id: column.id };
  const { id, name } = renamed;
  const gain = (scale?.fullScale ?? 1) / (scale?.sensitivity ?? 1);
  if (!(gain > 0 && Number.isFinite(gain))) {
    return recordingFault("recording.header-contradicts", `channel ${id}`, { field: "fullScale", got: String(gain), expected: "> 0" });
  }
  if (scale?.unit === undefined) {
    const { unit, quantity, factor } = renamed;
    return recordingValue({ channel: { id, name, unit, quantity, fullScale: null }, factor: factor * gain });
  }
  const known = unitFor(name, scale.unit);
  if (known === null) return recordingFault("recording.unit-unknown", `channel ${id}`, { channel: id, unit: scale.unit });
  return recordingValue({
    channel: { id, name, unit: scale.unit, quantity: known.quantity, fullScale: null },
    factor: known.factor * gain,
  });
}

/** A new name without a unit keeps the unit that the file gave. */
function renamedAs(column: ColumnName, heading: string): ColumnName {
  const renamed = columnName(heading);
  if (renamed.quantity !== "unknown") return renamed;
  return { ...column, name: renamed.name };
}
