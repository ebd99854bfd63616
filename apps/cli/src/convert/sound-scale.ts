import { type Channel, roundedUp } from "@halfturn/recordings";

/** What full scale stands for in each channel of a sound file, SI; or the first channel that would not fit, and what it reaches. */
export type SoundScale =
  | { readonly ok: true; readonly scales: readonly number[] }
  | { readonly ok: false; readonly channel: Channel; readonly reaches: number };

/**
 * Floats hold the values themselves. Whole numbers need a full scale: that which is given (for the channels of `quantity`), or the one that the recording had, or the least
 * round number that the values fit into.
 */
export function soundScale(
  channels: readonly Channel[],
  greatest: readonly number[],
  given: { readonly value: number; readonly quantity: Channel["quantity"] } | null,
  whole: boolean,
): SoundScale {
  const scales = channels.map(({ quantity, fullScale }, k) => {
    if (given?.quantity === quantity) return given.value;
    return whole ? (fullScale ?? roundedUp(greatest[k] as number)) : 1;
  });
  const over = whole ? channels.findIndex((_, k) => (greatest[k] as number) > (scales[k] as number)) : -1;
  if (over < 0) return { ok: true, scales };
  return { ok: false, channel: channels[over] as Channel, reaches: greatest[over] as number };
}
