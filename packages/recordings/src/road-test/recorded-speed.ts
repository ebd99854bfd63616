import type { Finding } from "@halfturn/engine/findings";
import type { PausedWork } from "@halfturn/engine/uncertainty";
import { shakes } from "../channels/shakes.js";
import { type ChannelPlace, channelPlaces } from "../find-channel.js";
import type { Channel, Recording } from "../recording.js";
import { type RecordingResult, recordingValue } from "../recording-result.js";
import { MEMORY, type SpoolRoom } from "../timing/sample-spool.js";
import { slowColumns } from "../timing/slow-channel.js";
import { loggedSpeed } from "./logged-speed.js";
import { pulseTimes } from "./pulse-times.js";

/** How fast something turned, on the recording's clock. Seconds, m/s, rad/s. */
export type RecordedSpeed =
  | { readonly kind: "pulses"; readonly part: string; readonly times: Float64Array; readonly perTurn: number }
  | { readonly kind: "road-speed"; readonly times: Float64Array; readonly speeds: Float64Array }
  | { readonly kind: "engine-speed"; readonly times: Float64Array; readonly speeds: Float64Array };

type SpeedKind = RecordedSpeed["kind"];

const TACHO = /^tacho(?:meter)?_?/i;

/** What a channel tells of speed; null where it tells nothing that can be used. */
export function speedKindOf(channel: Channel): SpeedKind | null {
  const { quantity, name } = channel;
  if (quantity === "pulses") return "pulses";
  if (quantity === "rotation") return /engine|motor/i.test(name) ? "engine-speed" : null;
  return quantity === "velocity" && !shakes(channel) ? "road-speed" : null;
}

/** The surest first: pulses count turns, a road speed goes through the tyre, an engine speed through clutch and gear. */
const SUREST: readonly SpeedKind[] = ["pulses", "road-speed", "engine-speed"];

/** Every channel that tells a speed, the surest first. */
export function speedPlaces(recording: Recording): readonly ChannelPlace[] {
  const places = channelPlaces(recording);
  return SUREST.flatMap((kind) => places.filter(({ channel }) => speedKindOf(channel) === kind));
}

/** The part that a tachometer's column is named after: `propeller-shaft` of tacho_propeller_shaft. */
export const tachoPart = ({ name }: Channel): string => name.replace(TACHO, "").toLowerCase().replaceAll("_", "-");

/** What is known of a tachometer beside its signal. */
export interface Tachometer {
  readonly part: string;
  /** Marks that pass in one turn of the part. */
  readonly perTurn: number;
}

/**
 * Reads how fast something turned. tachometer: where given, the channel is taken for its signal, whatever its name. room: where a long channel lies while it is
 * read; what is given back is held in memory. Faults as slowColumns. A channel that tells no speed is a programmer's error.
 */
export async function recordedSpeed(
  recording: Recording,
  { channel, track, index }: ChannelPlace,
  tachometer: Tachometer | null,
  work: PausedWork = {},
  room: SpoolRoom = MEMORY,
): Promise<RecordingResult<{ readonly speed: RecordedSpeed; readonly notes: readonly Finding[] }>> {
  const kind = tachometer === null ? speedKindOf(channel) : "pulses";
  if (kind === null) throw new RangeError(`${channel.id} tells no speed`);
  const read = await slowColumns(recording, track, index, room, work);
  if (!read.ok) return read;
  const { notes } = read.value;
  if (kind !== "pulses") return recordingValue({ speed: { kind, ...(await loggedSpeed(read.value, work)) }, notes });
  const { part, perTurn } = tachometer ?? { part: tachoPart(channel), perTurn: 1 };
  return recordingValue({ speed: { kind, part, perTurn, times: await pulseTimes(read.value, work) }, notes });
}
