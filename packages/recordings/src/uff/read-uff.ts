import type { Finding } from "@halfturn/engine/findings";
import type { LongWork } from "@halfturn/engine/uncertainty";
import type { ByteSource } from "../bytes/byte-source.js";
import { type ChannelScale, type ScaledChannel, scaledChannels } from "../channels/channel-scale.js";
import type { ColumnName } from "../channels/column-name.js";
import { noFullScale } from "../channels/no-full-scale.js";
import type { Block, Recording, Selection, Track } from "../recording.js";
import { type RecordingResult, recordingFault, recordingValue } from "../recording-result.js";
import { isTimeSignal } from "./uff-header.js";
import { findUffSets, type UffSet } from "./uff-sets.js";
import { uffNumbers } from "./uff-values.js";

/** Opens a universal file: each data set 58 or 58b that is a function of time is a track of one channel. */
export async function readUff(source: ByteSource, scales: readonly ChannelScale[]): Promise<RecordingResult<Recording>> {
  const found = await findUffSets(source);
  if (!found.ok) return found;
  const sets = found.value.filter(({ header }) => isTimeSignal(header));
  if (sets.length === 0) return recordingFault("recording.no-time-signal", "", { sets: found.value.length });
  const empty = sets.find(({ header }) => header.count === 0);
  if (empty !== undefined) return recordingFault("recording.no-samples", `byte ${empty.dataOffset}`, {});
  const scaled = scaledChannels(distinctNames(sets), scales);
  if (!scaled.ok) return scaled;
  const skipped = found.value.length - sets.length;
  return recordingValue({
    format: "uff",
    tracks: sets.map(({ header }, index): Track => {
      const { count, even, start, step } = header;
      const channels = [(scaled.value[index] as ScaledChannel).channel];
      return { channels, clock: even ? { kind: "even", start, rate: 1 / step, count } : { kind: "stamped", count } };
    }),
    notes: [
      ...(skipped > 0 ? [skippedNote(skipped)] : []),
      ...sets.flatMap(({ header }, index) => (header.unitTaken ? [unitTaken((scaled.value[index] as ScaledChannel).channel)] : [])),
      ...noFullScale(scaled.value.map(({ channel }) => channel)),
    ],
    read: (selection, work) =>
      blocksOf(source, sets[selection.track] as UffSet, scaled.value[selection.track] as ScaledChannel, selection, work),
  });
}

const skippedNote = (sets: number): Finding => ({ code: "recording.sets-skipped", severity: "note", path: "", params: { sets } });
const unitTaken = ({ id, unit }: Track["channels"][number]): Finding => ({
  code: "recording.unit-taken",
  severity: "note",
  path: id,
  params: { channel: id, unit: unit ?? "" },
});

/** Sets of one name get a number each from the second on. */
function distinctNames(sets: readonly UffSet[]): readonly ColumnName[] {
  const taken = new Set<string>();
  return sets.map(({ header: { column } }) => {
    let id = column.id;
    for (let copy = 2; taken.has(id); copy++) id = `${column.id}#${copy}`;
    taken.add(id);
    return { ...column, id };
  });
}

async function* blocksOf(
  source: ByteSource,
  set: UffSet,
  { factor }: ScaledChannel,
  selection: Selection,
  work: LongWork = {},
): AsyncGenerator<RecordingResult<Block>> {
  const { header } = set;
  let first = 0;
  for await (const numbers of uffNumbers(source, set)) {
    work.signal?.throwIfAborted();
    if (!numbers.ok) {
      yield numbers;
      return;
    }
    const stride = header.even ? 1 : 2;
    const length = numbers.value.length / stride;
    const values = new Float64Array(length);
    const times = header.even ? null : new Float64Array(length);
    for (let k = 0; k < length; k++) {
      values[k] = factor * (numbers.value[k * stride + stride - 1] as number);
      if (times !== null) times[k] = header.timeFactor * (numbers.value[k * 2] as number);
    }
    yield recordingValue({ first, times, values: selection.channels.map(() => values.slice()), notes: [] });
    first += length;
    work.onProgress?.(first / header.count);
  }
}
