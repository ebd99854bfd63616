import type { LongWork } from "@halfturn/engine/uncertainty";
import type { ChannelPlace } from "../find-channel.js";
import type { Block, Channel, Clock, Recording, Selection, Track } from "../recording.js";
import { type RecordingResult, recordingFault, recordingValue } from "../recording-result.js";

/** Seconds from the first sample of a recording on, both ends included; null = from its beginning, to its end. */
export interface Stretch {
  readonly from: number | null;
  readonly to: number | null;
}

/** A sample that lies this share of a step outside, by the rounding of its time, still belongs to a stretch. */
const ROUNDING = 1e-6;

/**
 * Some channels of a recording, and a stretch of them. Tracks of which no channel is wanted fall away, times stay as they are, and two channels of one name are told apart by a
 * number. Faults: those of the reader; recording.no-samples where none of a track lies in the stretch, which of stamps shows only when they are read.
 */
export async function partOfRecording(
  recording: Recording,
  places: readonly ChannelPlace[],
  stretch: Stretch,
): Promise<RecordingResult<Recording>> {
  const range = await rangeOf(recording, places, stretch);
  if (!range.ok) return range;
  const named = uniqueNames(places.map(({ channel }) => channel));
  const wanted = [...new Set(places.map(({ track }) => track))].map((track) => ({
    track,
    cut: cutOf((recording.tracks[track] as Track).clock, range.value),
    channels: places.flatMap((place, k) => (place.track === track ? [{ index: place.index, channel: named[k] as Channel }] : [])),
  }));
  if (wanted.some(({ cut }) => cut.clock.count === 0)) return recordingFault("recording.no-samples", "", {});
  return recordingValue({
    format: recording.format,
    notes: recording.notes.filter(({ path }) => path === "" || places.some(({ channel }) => channel.id === path)),
    tracks: wanted.map(({ cut, channels }) => ({ clock: cut.clock, channels: channels.map(({ channel }) => channel) })),
    read: ({ track, channels }, work) => {
      const own = wanted[track] as (typeof wanted)[number];
      const asked = { track: own.track, channels: channels.map((k) => (own.channels[k] as { readonly index: number }).index) };
      return cutBlocks(recording, asked, own.cut, work);
    },
  });
}

interface Range {
  readonly begin: number;
  readonly end: number;
}

async function rangeOf(recording: Recording, places: readonly ChannelPlace[], { from, to }: Stretch): Promise<RecordingResult<Range>> {
  if (from === null && to === null) return recordingValue({ begin: Number.NEGATIVE_INFINITY, end: Number.POSITIVE_INFINITY });
  let origin = Number.POSITIVE_INFINITY;
  for (const track of new Set(places.map((place) => place.track))) {
    const start = await startOf(recording, track);
    if (!start.ok) return start;
    origin = Math.min(origin, start.value);
  }
  return recordingValue({
    begin: from === null ? Number.NEGATIVE_INFINITY : origin + from,
    end: origin + (to ?? Number.POSITIVE_INFINITY),
  });
}

async function startOf(recording: Recording, track: number): Promise<RecordingResult<number>> {
  const clock = (recording.tracks[track] as Track).clock;
  if (clock.kind === "even") return recordingValue(clock.start);
  for await (const block of recording.read({ track, channels: [0] })) {
    if (!block.ok) return block;
    const first = block.value.times?.[0];
    if (first !== undefined) return recordingValue(first);
  }
  return recordingFault("recording.no-samples", "", {});
}

/** What of a track lies in a range: of an even clock by number, of stamps by their time. */
interface Cut {
  readonly clock: Clock;
  readonly first: number;
  readonly range: Range;
}

function cutOf(clock: Clock, range: Range): Cut {
  if (clock.kind === "stamped") {
    const whole = range.begin === Number.NEGATIVE_INFINITY && range.end === Number.POSITIVE_INFINITY;
    return { clock: whole ? clock : { kind: "stamped", count: null }, first: 0, range };
  }
  const { start, rate, count } = clock;
  const first = Math.max(0, Math.ceil((range.begin - start) * rate - ROUNDING));
  const last = Math.min(count - 1, Math.floor((range.end - start) * rate + ROUNDING));
  return { clock: { kind: "even", rate, start: start + first / rate, count: Math.max(0, last - first + 1) }, first, range };
}

async function* cutBlocks(recording: Recording, asked: Selection, cut: Cut, work?: LongWork): AsyncGenerator<RecordingResult<Block>> {
  let given = 0;
  for await (const block of recording.read(asked, work)) {
    if (!block.ok) {
      yield block;
      return;
    }
    const { first, times, values, notes } = block.value;
    const length = values[0]?.length ?? 0;
    const [from, to] = times === null ? indexRange(cut, first, length) : timeRange(times, cut.range);
    if (to > from) {
      yield recordingValue({
        first: given,
        times: times?.subarray(from, to) ?? null,
        values: values.map((column) => column.subarray(from, to)),
        notes,
      });
      given += to - from;
    }
    if (to < length && given > 0) return;
  }
  if (given === 0) yield recordingFault("recording.no-samples", "", {});
}

function indexRange({ clock, first: begin }: Cut, first: number, length: number): readonly [number, number] {
  const end = begin + (clock.count ?? 0);
  return [Math.max(0, Math.min(length, begin - first)), Math.max(0, Math.min(length, end - first))];
}

/** Times never fall. */
function timeRange(times: Float64Array, { begin, end }: Range): readonly [number, number] {
  const from = times.findIndex((time) => time >= begin);
  const after = times.findIndex((time) => time > end);
  return [from < 0 ? times.length : from, after < 0 ? times.length : after];
}

/** A universal file may hold several channels of one name; no table can. */
function uniqueNames(channels: readonly Channel[]): readonly Channel[] {
  const taken = new Set<string>();
  return channels.map((channel) => {
    let { name } = channel;
    for (let copy = 2; taken.has(name.toLowerCase()); copy++) name = `${channel.name}_${copy}`;
    taken.add(name.toLowerCase());
    return { ...channel, name };
  });
}
