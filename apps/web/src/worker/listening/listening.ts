import type { Finding } from "@halfturn/engine/findings";
import type { SampleReader, SignalResult } from "@halfturn/engine/signal";
import { inPieces } from "@halfturn/engine/uncertainty";
import {
  type ByteSource,
  type ChannelScale,
  channelPlaces,
  hearablePlaces,
  heardReaders,
  isHeard,
  openRecording,
  type Recording,
  type RecordingResult,
  speedKindOf,
  speedPlaces,
} from "@halfturn/recordings";
import { pause } from "../pause.js";
import { type HeardHere, hear } from "./hear.js";
import { type Housed, housed } from "./housed.js";
import { inHundredths } from "./in-hundredths.js";
import type { Envelope, HearRequest, HearResult, Look, ReadChannels, ReadResult, SpectrumView } from "./listening-types.js";
import { MOST_HELD } from "./private-spools.js";
import { envelopeSteps, spectrumSteps, stretchOf } from "./views.js";

/** The recording that is open, and its channels that were read; one at a time. */
let recording: Recording | null = null;
let channels: Housed<HeardHere> | null = null;
/** What was asked to be opened last is what stays open, whichever comes up first. */
let opening = 0;

const stopped = new Set<number>();
const workOf = (work: number, onProgress: (share: number) => void) => ({
  signal: {
    throwIfAborted: () => {
      if (stopped.has(work)) throw new DOMException("stopped", "AbortError");
    },
  },
  onProgress: inHundredths(onProgress),
  pause,
});

/** A blob is read in parts, so that a long file need not fit into memory. */
const blobSource = (blob: Blob): ByteSource => ({
  size: blob.size,
  read: async (offset, length) => new Uint8Array(await blob.slice(offset, offset + length).arrayBuffer()),
});

/** Lets the channels go that were read; their samples are in nobody's way at once. */
function letGo(): Promise<void> | undefined {
  const before = channels;
  channels = null;
  return before?.close();
}

/** Works on one of the channels that were read; null where none was, or they were let go meanwhile. */
async function ofRun<Made>(channel: number, steps: (run: SampleReader) => Generator<number, Made>): Promise<Made | null> {
  const mine = channels;
  const heard = mine?.answer.ok ? mine.answer.value.heard[channel] : undefined;
  if (heard === undefined) return null;
  const throwIfAborted = (): void => {
    if (channels !== mine) throw new DOMException("let go", "AbortError");
  };
  try {
    return await inPieces(steps(heard.recorded.samples), { signal: { throwIfAborted }, pause });
  } catch (error) {
    if (channels !== mine) return null;
    throw error;
  }
}

/** What the listening worker can be asked. Everything handed over is plain data. */
export const listening = {
  open: async (file: Blob, scales: readonly ChannelScale[]): Promise<RecordingResult<Look>> => {
    opening += 1;
    const mine = opening;
    recording = null;
    const [opened] = await Promise.all([openRecording(blobSource(file), scales), letGo()]);
    if (mine === opening) recording = opened.ok ? opened.value : null;
    return opened.ok ? { ok: true, value: lookAt(opened.value) } : opened;
  },

  read: async (ids: readonly string[], work: number, onProgress: (share: number) => void): Promise<ReadResult> => {
    const mine = recording;
    if (!mine) throw new Error("no recording is open");
    const places = channelPlaces(mine).filter(({ channel }) => ids.includes(channel.id));
    try {
      await letGo();
      const own = workOf(work, onProgress);
      const read = await housed(mine, places, (room) => heardReaders(mine, places, room, own));
      if (read.answer.ok && recording === mine && !stopped.has(work)) {
        // Whatever was read meanwhile makes way.
        const gone = letGo();
        channels = read;
        await gone;
        return { ok: true, value: readOf(read.answer.value, read.inMemory) };
      }
      await read.close();
      return read.answer.ok ? Promise.reject(new DOMException("stopped", "AbortError")) : { ...read.answer, inMemory: read.inMemory };
    } finally {
      stopped.delete(work);
    }
  },

  envelope: (channel: number, from: number, to: number, columns: number): Promise<Envelope | null> =>
    ofRun(channel, (run) => envelopeSteps(stretchOf(run, from, to), columns)),

  spectrum: (channel: number, from: number, to: number): Promise<SignalResult<SpectrumView> | null> =>
    ofRun(channel, (run) => spectrumSteps(stretchOf(run, from, to))),

  hear: async (request: HearRequest, work: number, onProgress: (share: number) => void): Promise<HearResult> => {
    if (!recording || !channels?.answer.ok) throw new Error("no channel was read");
    try {
      return await hear(recording, channels.answer.value, request, workOf(work, onProgress));
    } finally {
      stopped.delete(work);
    }
  },

  /** Ends with the recording: nothing of it stays on the device. */
  close: async (): Promise<void> => {
    opening += 1;
    recording = null;
    await letGo();
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

function readOf({ heard, findings }: HeardHere, inMemory: ReadChannels["inMemory"]): ReadChannels {
  const [{ recorded, even }] = heard as [HeardHere["heard"][number]];
  const { start, length, rate } = recorded.samples;
  return {
    ids: heard.map(({ place }) => place.channel.id),
    start,
    seconds: length / rate,
    rate: even.rate,
    method: even.method,
    jitterShare: even.jitterShare,
    gaps: { count: even.gaps.length, seconds: even.gaps.reduce((sum, gap) => sum + gap.seconds, 0) },
    findings: findings as readonly Finding[],
    inMemory: length > MOST_HELD ? inMemory : null,
  };
}
