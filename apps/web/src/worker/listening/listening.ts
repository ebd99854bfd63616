import type { Finding } from "@halfturn/engine/findings";
import type { SignalResult, TimeSignal } from "@halfturn/engine/signal";
import {
  type ByteSource,
  type ChannelScale,
  channelPlaces,
  type HeardChannels,
  hearablePlaces,
  heardChannels,
  isHeard,
  openRecording,
  type Recording,
  type RecordingResult,
  speedKindOf,
  speedPlaces,
} from "@halfturn/recordings";
import { pause } from "../pause.js";
import { fitsHere } from "./fits-here.js";
import { hear } from "./hear.js";
import type { Envelope, HearRequest, HearResult, Look, ReadChannels, SpectrumView } from "./listening-types.js";
import { envelopeOf, spectrumOf, stretchOf } from "./views.js";

/** The recording that is open; one at a time. */
let recording: Recording | null = null;
let channels: HeardChannels | null = null;

const stopped = new Set<number>();
const workOf = (work: number, onProgress: (share: number) => void) => ({
  signal: {
    throwIfAborted: () => {
      if (stopped.has(work)) throw new DOMException("stopped", "AbortError");
    },
  },
  onProgress,
  pause,
});

/** A blob is read in parts, so that a long file need not fit into memory. */
const blobSource = (blob: Blob): ByteSource => ({
  size: blob.size,
  read: async (offset, length) => new Uint8Array(await blob.slice(offset, offset + length).arrayBuffer()),
});

const runOf = (channel: number): TimeSignal | null => channels?.heard[channel]?.run ?? null;

/** What the listening worker can be asked. Everything handed over is plain data. */
export const listening = {
  open: async (file: Blob, scales: readonly ChannelScale[]): Promise<RecordingResult<Look>> => {
    channels = null;
    const opened = await openRecording(blobSource(file), scales);
    recording = opened.ok ? opened.value : null;
    return opened.ok ? { ok: true, value: lookAt(opened.value) } : opened;
  },

  read: async (ids: readonly string[], work: number, onProgress: (share: number) => void): Promise<RecordingResult<ReadChannels>> => {
    if (!recording) throw new Error("no recording is open");
    const places = channelPlaces(recording).filter(({ channel }) => ids.includes(channel.id));
    const fits = fitsHere(recording, places);
    if (!fits.ok) return fits;
    try {
      const read = await heardChannels(recording, places, workOf(work, onProgress));
      if (!read.ok) return read;
      channels = read.value;
      return { ok: true, value: readOf(read.value) };
    } finally {
      stopped.delete(work);
    }
  },

  envelope: (channel: number, from: number, to: number, columns: number): Envelope | null => {
    const run = runOf(channel);
    return run && envelopeOf(stretchOf(run, from, to).samples, columns);
  },

  spectrum: (channel: number, from: number, to: number): SignalResult<SpectrumView> | null => {
    const run = runOf(channel);
    return run && spectrumOf(stretchOf(run, from, to));
  },

  hear: async (request: HearRequest, work: number, onProgress: (share: number) => void): Promise<HearResult> => {
    if (!recording || !channels) throw new Error("no channel was read");
    try {
      return await hear(recording, channels, request, workOf(work, onProgress));
    } finally {
      stopped.delete(work);
    }
  },

  stop: (work: number): void => {
    stopped.add(work);
  },
};

export type Listening = typeof listening;

function lookAt(opened: Recording): Look {
  return {
    format: opened.format,
    channels: channelPlaces(opened).map(({ channel: { id, name, unit, quantity, fullScale }, channel }) => ({
      id,
      name,
      unit,
      quantity,
      fullScale,
      heard: isHeard(channel),
      speed: speedKindOf(channel),
    })),
    best: hearablePlaces(opened).map(({ channel }) => channel.id),
    surestSpeed: speedPlaces(opened)[0]?.channel.id ?? null,
    notes: opened.notes,
  };
}

function readOf({ heard, findings }: HeardChannels): ReadChannels {
  const [first] = heard as [HeardChannels["heard"][number]];
  const { run, even } = first;
  return {
    ids: heard.map(({ place }) => place.channel.id),
    start: run.start,
    seconds: run.samples.length / run.rate,
    rate: even.rate,
    method: even.method,
    jitterShare: even.jitterShare,
    gaps: { count: even.gaps.length, seconds: even.gaps.reduce((sum, gap) => sum + gap.seconds, 0) },
    findings: findings as readonly Finding[],
  };
}
