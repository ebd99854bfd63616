import type { RecordedChannel } from "@halfturn/engine/attribution";
import type { Finding } from "@halfturn/engine/findings";
import type { PausedWork } from "@halfturn/engine/uncertainty";
import { channelPlaces, findChannel, type HeardQuantity, hearablePlaces, heardReaders, type SpoolRoom } from "@halfturn/recordings";
import type { Catalogue } from "@halfturn/words";
import { BAD_USE } from "../program/exit-code.js";
import type { OpenRoadTest } from "./open-road-test.js";
import { faultRefusal, type Refusal } from "./refusal.js";

/** The channels that are listened to, on one clock. */
export interface VibrationChannels {
  readonly ok: true;
  readonly names: readonly string[];
  readonly quantities: readonly HeardQuantity[];
  readonly channels: readonly RecordedChannel[];
  readonly findings: readonly Finding[];
}

/** Reads the channel that was named, or every channel of the best kind, at even steps of time: the longest stretch without a gap. */
export async function vibrationChannels(
  { recording, path }: OpenRoadTest,
  named: string | undefined,
  room: SpoolRoom,
  words: Catalogue,
  work: PausedWork,
): Promise<VibrationChannels | Refusal> {
  const found = named === undefined ? null : findChannel(recording, named);
  if (found !== null && !found.ok) return faultRefusal(found, path, words);
  const wanted = found === null ? hearablePlaces(recording) : [found.value];
  if (wanted.length === 0) {
    const ids = channelPlaces(recording).map(({ channel }) => channel.id);
    return { ok: false, code: BAD_USE, lines: [words.terminal.listening.noVibration(path, ids.join(", "))] };
  }
  const read = await heardReaders(recording, wanted, room, work);
  if (!read.ok) return faultRefusal(read, path, words);
  const { heard, findings } = read.value;
  const names = heard.map(({ place }) => place.channel.id);
  const quantities = heard.map(({ quantity }) => quantity);
  return { ok: true, names, quantities, channels: heard.map(({ recorded }) => recorded), findings };
}
