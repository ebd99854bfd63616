import type { Finding } from "@halfturn/engine/findings";
import type { Channel } from "../recording.js";

/** Says of each channel of shares that nobody told its full scale. */
export const noFullScale = (channels: readonly Channel[]): readonly Finding[] =>
  channels.flatMap(({ quantity, id }) =>
    quantity === "share" ? [{ code: "recording.no-full-scale", severity: "warn", path: id, params: { channel: id } }] : [],
  );
