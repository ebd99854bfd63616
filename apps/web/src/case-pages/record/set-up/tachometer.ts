import { type ChannelScale, tachoPart } from "@halfturn/recordings";
import type { Look, LookedChannel } from "../../../worker/listening/listening-types.js";
import type { SpeedForm } from "./speed-form.js";

/** Of these nobody knows what they measure; in a sound file every channel is one until somebody says what it is. */
const UNSAID: readonly LookedChannel["quantity"][] = ["voltage", "unknown", "share"];

/** Channels that tell a speed, or may be a tachometer's signal: one is left to be listened to. */
export function speedChannels({ channels }: Look): readonly LookedChannel[] {
  const heard = channels.filter((channel) => channel.heard).length;
  return channels.filter((channel) => channel.speed !== null || (UNSAID.includes(channel.quantity) && (!channel.heard || heard > 1)));
}

/** The channel that counts turns; null where none does. */
export const tachometerOf = ({ from, channel }: SpeedForm): string | null => (from === "tachometer" ? channel : null);

/** What the case keeps of the channels: by its name it knows the one that was chosen to count turns. */
export function keptScales(scales: readonly ChannelScale[], { channels }: Look, form: SpeedForm): readonly ChannelScale[] {
  const channel = channels.find(({ id }) => id === tachometerOf(form));
  if (channel === undefined || (channel.speed === "pulses" && tachoPart(channel) === form.part)) return scales;
  // Beside a unit it would be taken for what that unit measures.
  return [...scales.filter(({ id }) => id !== channel.id), { id: channel.id, name: `tacho_${form.part.replaceAll("-", "_")}` }];
}
