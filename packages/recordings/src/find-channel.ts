import type { Channel, Recording } from "./recording.js";
import { type RecordingResult, recordingFault, recordingValue } from "./recording-result.js";

/** Where a channel stands in a recording. */
export interface ChannelPlace {
  readonly track: number;
  readonly index: number;
  readonly channel: Channel;
}

/** Every channel and its place, in the order of the file. */
export const channelPlaces = (recording: Recording): readonly ChannelPlace[] =>
  recording.tracks.flatMap(({ channels }, track) => channels.map((channel, index) => ({ track, index, channel })));

/** The channel of a name: as the file writes it, or without its unit. Upper and lower case are alike where that leaves one. */
export function findChannel(recording: Recording, name: string): RecordingResult<ChannelPlace> {
  const places = channelPlaces(recording);
  const wanted = name.toLowerCase();
  const found =
    places.find(({ channel }) => channel.id === name) ??
    places.find(({ channel }) => channel.name === name) ??
    places.find(({ channel }) => channel.id.toLowerCase() === wanted || channel.name.toLowerCase() === wanted);
  if (found !== undefined) return recordingValue(found);
  return recordingFault("recording.channel-unknown", `channel ${name}`, {
    got: name,
    allowed: places.map(({ channel }) => channel.id).join(", "),
  });
}
