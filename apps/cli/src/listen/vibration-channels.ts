import type { RecordedChannel } from "@halfturn/engine/attribution";
import type { Finding } from "@halfturn/engine/findings";
import { readerOf, type TimeSignal } from "@halfturn/engine/signal";
import {
  type ChannelPlace,
  type ChannelQuantity,
  channelPlaces,
  type EvenChannel,
  evenChannel,
  findChannel,
  type TimingWork,
} from "@halfturn/recordings";
import type { Catalogue } from "@halfturn/words";
import { BAD_USE } from "../program/exit-code.js";
import type { OpenRoadTest } from "./open-road-test.js";
import { faultRefusal, type Refusal } from "./refusal.js";

/** The channels that are listened to, on one clock. */
export interface VibrationChannels {
  readonly ok: true;
  readonly names: readonly string[];
  readonly channels: readonly RecordedChannel[];
  readonly findings: readonly Finding[];
}

/** What can be listened to, best first: accelerations; sounds; samples of which nothing is known but that they are samples. */
const HEARD: readonly ChannelQuantity[] = ["acceleration", "pressure", "share"];

/** Reads the channel that was named, or every channel of the best kind, at even steps of time: the longest stretch without a gap. */
export async function vibrationChannels(
  { recording, path }: OpenRoadTest,
  named: string | undefined,
  words: Catalogue,
  work: TimingWork,
): Promise<VibrationChannels | Refusal> {
  const places = channelPlaces(recording);
  const found = named === undefined ? null : findChannel(recording, named);
  if (found !== null && !found.ok) return { ...faultRefusal(found, path, words) };
  const wanted = found === null ? ofBestKind(places) : [found.value];
  const [first] = wanted;
  if (first === undefined) {
    const ids = places.map(({ channel }) => channel.id).join(", ");
    return { ok: false, code: BAD_USE, lines: [words.terminal.listening.noVibration(path, ids)] };
  }
  if (!HEARD.includes(first.channel.quantity)) return wrongKind(first, path, words);
  const read: { readonly place: ChannelPlace; readonly even: EvenChannel; readonly run: TimeSignal }[] = [];
  const share = 1 / wanted.length;
  for (const [k, place] of wanted.entries()) {
    const onProgress = work.onProgress && ((done: number) => work.onProgress?.((k + done) * share));
    const even = await evenChannel(recording, place.track, place.index, { signal: work.signal, pause: work.pause, onProgress });
    if (!even.ok) return faultRefusal(even, path, words);
    read.push({ place, even: even.value, run: longest(even.value.runs) });
  }
  const [reference] = read as [(typeof read)[number]];
  const kept = read.filter(({ run }) => covers(run, reference.run));
  const out = read.filter(({ run }) => !covers(run, reference.run));
  return {
    ok: true,
    names: kept.map(({ place }) => place.channel.id),
    channels: kept.map(({ place, run }) => recorded(place, run)),
    findings: [
      ...recording.notes.filter(({ path: id }) => id === "" || kept.some(({ place }) => place.channel.id === id)),
      ...kept.flatMap(({ even }, k) => (k === 0 ? even.notes : even.notes.filter((note) => !saidOfAll(note, reference.even)))),
      ...out.map(({ place }) => leftOut(place.channel.id, reference.place.channel.id)),
    ],
  };
}

const ofBestKind = (places: readonly ChannelPlace[]): readonly ChannelPlace[] =>
  HEARD.map((quantity) => places.filter(({ channel }) => channel.quantity === quantity)).find(({ length }) => length > 0) ?? [];

const wrongKind = ({ channel }: ChannelPlace, path: string, words: Catalogue): Refusal =>
  faultRefusal(
    {
      ok: false,
      code: "recording.unit-of-another-kind",
      path: `channel ${channel.id}`,
      params: { channel: channel.id, got: channel.unit ?? channel.quantity, expected: "m/s^2, g" },
    },
    path,
    words,
  );

const longest = (runs: EvenChannel["runs"]): TimeSignal =>
  runs.reduce((best, run) => (run.samples.length > best.samples.length ? run : best));

/** Whether two runs hold the same moments, but for the rounding of their times. */
const covers = (run: TimeSignal, other: TimeSignal): boolean =>
  run.samples.length === other.samples.length &&
  Math.abs(run.start - other.start) * other.rate < 0.01 &&
  Math.abs(run.rate / other.rate - 1) * run.samples.length < 0.01;

const recorded = ({ channel }: ChannelPlace, run: TimeSignal): RecordedChannel => ({
  samples: readerOf(run),
  quantity: channel.quantity === "acceleration" ? "acceleration" : "sound",
  fullScale: channel.fullScale,
});

/** Channels of one clock share its gaps and its jitter; that is said once. */
const saidOfAll = (note: Finding, first: EvenChannel): boolean => first.notes.some(({ code }) => code === note.code);

const leftOut = (channel: string, other: string): Finding => ({
  code: "recording.channel-left-out",
  severity: "warn",
  path: channel,
  params: { channel, other },
});
