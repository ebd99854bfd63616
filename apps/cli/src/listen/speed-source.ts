import type { SpeedSource } from "@halfturn/casefile";
import type { Finding } from "@halfturn/engine/findings";
import { risingEdges } from "@halfturn/engine/signal";
import {
  type Channel,
  type ChannelPlace,
  channelPlaces,
  findChannel,
  type SlowChannel,
  slowChannel,
  type TimingWork,
} from "@halfturn/recordings";
import type { Catalogue } from "@halfturn/words";
import { BAD_USE, UNANSWERED } from "../program/exit-code.js";
import type { OpenRoadTest } from "./open-road-test.js";
import { faultRefusal, type Refusal } from "./refusal.js";

/** How fast something turned, and where that was read. */
export interface ReadSpeed {
  readonly ok: true;
  readonly column: string;
  readonly source: SpeedSource;
  readonly findings: readonly Finding[];
}

type SpeedKind = SpeedSource["kind"];

const TACHO = /^tacho(?:meter)?_?/i;

/** What a channel tells of speed; null where it tells nothing that can be used. */
function kindOf({ quantity, name }: Channel): SpeedKind | null {
  if (quantity === "pulses") return "pulses";
  if (quantity === "rotation") return /engine|motor/i.test(name) ? "engine-speed" : null;
  return quantity === "velocity" ? "road-speed" : null;
}

/** The surest first: pulses count turns, a road speed goes through the tyre, an engine speed through clutch and gear. */
const SUREST: readonly SpeedKind[] = ["pulses", "road-speed", "engine-speed"];

/** Reads the column that was named, or the surest there is. */
export async function speedSource(
  { recording, path, settings }: OpenRoadTest,
  column: string | undefined,
  words: Catalogue,
  work: TimingWork,
): Promise<ReadSpeed | Refusal> {
  const { listening } = words.terminal;
  const found = column === undefined ? null : findChannel(recording, column);
  if (found !== null && !found.ok) return faultRefusal(found, path, words);
  const place = found?.value ?? surest(channelPlaces(recording));
  if (place === undefined) return { ok: false, code: UNANSWERED, lines: [listening.noSpeed(path)] };
  const kind = kindOf(place.channel);
  if (kind === null) return { ok: false, code: BAD_USE, lines: [listening.speedKind(place.channel.id)] };
  const read = await slowChannel(recording, place.track, place.index, work);
  if (!read.ok) return faultRefusal(read, path, words);
  return {
    ok: true,
    column: place.channel.id,
    source: sourceOf(kind, place.channel, read.value, settings.pulsesPerTurn),
    findings: read.value.notes,
  };
}

const surest = (places: readonly ChannelPlace[]): ChannelPlace | undefined =>
  SUREST.map((kind) => places.find(({ channel }) => kindOf(channel) === kind)).find((place) => place !== undefined);

function sourceOf(kind: SpeedKind, { name }: Channel, { times, values }: SlowChannel, perTurn: number): SpeedSource {
  if (kind !== "pulses") return { kind, times, speeds: values };
  const part = name.replace(TACHO, "").toLowerCase().replaceAll("_", "-");
  return { kind, part, times: risingEdges(times, values, middleOf(values)), perTurn };
}

/** Half way between rest and mark: 0.5 of a column of 0 and 1, and right for a raw voltage too. */
function middleOf(values: Float64Array): number {
  let [low, high] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  for (const value of values) {
    low = Math.min(low, value);
    high = Math.max(high, value);
  }
  return (low + high) / 2;
}
