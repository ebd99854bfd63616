import { MOVES, shakes } from "../channels/shakes.js";
import type { ChannelQuantity } from "../channels/unit-table.js";
import { type ChannelPlace, channelPlaces } from "../find-channel.js";
import type { Channel, Recording } from "../recording.js";

/** What can be listened to, best first: accelerations, vibration velocities and displacements; sounds; samples of which nothing is known but that they are samples. */
const HEARD: readonly ChannelQuantity[] = ["acceleration", "velocity", "displacement", "pressure", "share"];

/** Whether a vibration can be read from a channel. */
export const isHeard = (channel: Channel): boolean =>
  HEARD.includes(channel.quantity) && (!MOVES.includes(channel.quantity) || shakes(channel));

/** Every channel of the best kind that a recording has; none where it has nothing that can be listened to. */
export function hearablePlaces(recording: Recording): readonly ChannelPlace[] {
  const places = channelPlaces(recording);
  return (
    HEARD.map((quantity) => places.filter(({ channel }) => channel.quantity === quantity && isHeard(channel))).find(
      ({ length }) => length > 0,
    ) ?? []
  );
}
