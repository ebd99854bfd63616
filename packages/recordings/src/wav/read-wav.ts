import type { Finding } from "@halfturn/engine/findings";
import type { LongWork } from "@halfturn/engine/uncertainty";
import { type ByteSource, readUpTo } from "../bytes/byte-source.js";
import { type ChannelScale, type ScaledChannel, scaledChannels } from "../channels/channel-scale.js";
import type { ColumnName } from "../channels/column-name.js";
import { noFullScale } from "../channels/no-full-scale.js";
import type { Block, Recording, Selection } from "../recording.js";
import { type RecordingResult, recordingFault, recordingValue } from "../recording-result.js";
import { BYTES_OF, SAMPLE_READERS } from "./wav-encoding.js";
import { readWavHeader, viewOf, type WavHeader } from "./wav-header.js";

/** Bytes read at a time. */
const STRETCH = 256 * 1024;

/** Opens a WAV. Its values are shares of full scale unless `scales` say what full scale is. */
export async function readWav(source: ByteSource, scales: readonly ChannelScale[]): Promise<RecordingResult<Recording>> {
  const header = await readWavHeader(source);
  if (!header.ok) return header;
  const { channels, rate, count, openLength } = header.value;
  const columns = Array.from({ length: channels }, (_, index) => wavColumn(index));
  const named = scaledChannels(columns, scales);
  if (!named.ok) return named;
  const whole = !header.value.encoding.startsWith("float");
  const scaled = named.value.map(({ channel, factor }) => ({ factor, channel: { ...channel, fullScale: whole ? factor : null } }));
  const notes: Finding[] = openLength
    ? [{ code: "recording.length-open", severity: "note", path: "", params: { seconds: count / rate } }]
    : [];
  const own = scaled.map(({ channel }) => channel);
  return recordingValue({
    format: "wav",
    tracks: [{ clock: { kind: "even", start: 0, rate, count }, channels: own }],
    notes: [...notes, ...noFullScale(own)],
    read: (selection, work) => blocksOf(source, header.value, scaled, selection, work),
  });
}

function wavColumn(index: number): ColumnName {
  const id = `channel_${index + 1}`;
  return { id, name: id, unit: null, quantity: "share", factor: 1 };
}

async function* blocksOf(
  source: ByteSource,
  header: WavHeader,
  channels: readonly ScaledChannel[],
  selection: Selection,
  work: LongWork = {},
): AsyncGenerator<RecordingResult<Block>> {
  const { encoding, count, dataOffset } = header;
  const width = BYTES_OF[encoding];
  const frame = width * header.channels;
  const most = Math.max(1, Math.floor(STRETCH / frame));
  const read = SAMPLE_READERS[encoding];
  for (let first = 0; first < count; first += most) {
    work.signal?.throwIfAborted();
    const wanted = Math.min(most, count - first);
    const bytes = await readUpTo(source, dataOffset + first * frame, wanted * frame);
    if (bytes.length < wanted * frame) {
      const place = dataOffset + first * frame;
      yield recordingFault("recording.truncated", `byte ${place}`, { promised: dataOffset + count * frame, present: place + bytes.length });
      return;
    }
    const view = viewOf(bytes);
    const values = selection.channels.map((channel) => {
      const factor = (channels[channel] as ScaledChannel).factor;
      const out = new Float64Array(wanted);
      for (let k = 0, at = channel * width; k < wanted; k++, at += frame) out[k] = factor * read(view, at);
      return out;
    });
    yield recordingValue({ first, times: null, values, notes: [] });
    work.onProgress?.((first + wanted) / count);
  }
}
