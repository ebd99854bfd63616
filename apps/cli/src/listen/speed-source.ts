import type { SpeedSource } from "@halfturn/casefile";
import type { Finding } from "@halfturn/engine/findings";
import type { PausedWork } from "@halfturn/engine/uncertainty";
import { findChannel, recordedSpeed, type SpoolRoom, speedKindOf, speedPlaces, tachoPart } from "@halfturn/recordings";
import type { Catalogue } from "@halfturn/words";
import { BAD_USE } from "../program/exit-code.js";
import type { OpenRoadTest } from "./open-road-test.js";
import { faultRefusal, type Refusal } from "./refusal.js";

/** How fast something turned, and where that was read. */
export interface ReadSpeed {
  readonly ok: true;
  readonly column: string;
  readonly source: SpeedSource;
  readonly findings: readonly Finding[];
}

/** Reads the column that was named, or the surest there is; null where no column tells a speed and none was named. */
export async function speedSource(
  { recording, path, settings }: OpenRoadTest,
  column: string | undefined,
  room: SpoolRoom,
  words: Catalogue,
  work: PausedWork,
): Promise<ReadSpeed | Refusal | null> {
  const found = column === undefined ? null : findChannel(recording, column);
  if (found !== null && !found.ok) return faultRefusal(found, path, words);
  const place = found?.value ?? speedPlaces(recording)[0];
  if (place === undefined) return null;
  const { channel } = place;
  const kind = speedKindOf(channel);
  if (kind === null) return { ok: false, code: BAD_USE, lines: [words.terminal.listening.speedKind(channel.id)] };
  const tachometer = kind === "pulses" ? { part: tachoPart(channel), perTurn: settings.pulsesPerTurn } : null;
  const read = await recordedSpeed(recording, place, tachometer, work, room);
  if (!read.ok) return faultRefusal(read, path, words);
  return { ok: true, column: channel.id, source: read.value.speed, findings: read.value.notes };
}
