import { MOVES, shakes } from "../channels/shakes.js";
import type { ChannelQuantity } from "../channels/unit-table.js";
import { type ChannelPlace, channelPlaces } from "../find-channel.js";
import type { Channel, Recording } from "../recording.js";

/** What can be listened to, best first: accelerations, vibration velocities and displacements; sounds; samples of which nothing is known but that they are samples. */
const HEARD = ["acceleration", "velocity", "displacement", "pressure", "share"] as const satisfies readonly ChannelQuantity[];
/** What a channel can measure that is listened to. */
export type HeardQuantity = (typeof HEARD)[number];

/** Whether a vibration can be read from a channel. */
export const isHeard = (channel: Channel): channel is Channel & { readonly quantity: HeardQuantity } =>
  HEARD.some((quantity) => quantity === channel.quantity) && (!MOVES.includes(channel.quantity) || shakes(channel));

/** Every channel of the best kind that a recording has; none where it has nothing that can be listened to. */
export function hearablePlaces(recording: Recording): readonly ChannelPlace[] {
  const places = channelPlaces(recording);
  return (
    HEARD.map((quantity) => places.filter(({ channel }) => channel.quantity === quantity && isHeard(channel))).find(
      ({ length }) => length > 0,
    ) ?? []
  );
}
