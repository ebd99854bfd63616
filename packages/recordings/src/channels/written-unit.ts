import type { Channel } from "../recording.js";
import { shakes } from "./shakes.js";

/** The unit that a channel is written in. */
export interface WrittenUnit {
  /** As it is written; null where there is none. */
  readonly unit: string | null;
  /** The ending of a column's heading that says it. */
  readonly suffix: string;
  /** How many of it one in SI is. */
  readonly perSi: number;
}

const NONE: WrittenUnit = { unit: null, suffix: "", perSi: 1 };
const si = (unit: string, suffix: string): WrittenUnit => ({ unit, suffix, perSi: 1 });

const WRITTEN: { readonly [Q in Channel["quantity"]]: WrittenUnit } = {
  time: { unit: null, suffix: "_s", perSi: 1 },
  acceleration: si("m/s^2", "_ms2"),
  velocity: si("m/s", "_mps"),
  displacement: si("m", "_m"),
  rotation: si("rad/s", "_rads"),
  pressure: si("Pa", "_pa"),
  voltage: si("V", "_v"),
  pulses: NONE,
  share: si("FS", "_fs"),
  unknown: NONE,
};

/** By a small unit a reader knows the velocity or the displacement of a vibration from that of the drive. */
const SHAKING: { readonly [Q in Channel["quantity"]]?: WrittenUnit } = {
  velocity: { unit: "mm/s", suffix: "_mms", perSi: 1000 },
  displacement: { unit: "mm", suffix: "_mm", perSi: 1000 },
};

/** SI, but for a velocity or a displacement of a vibration. */
export const writtenUnit = (channel: Pick<Channel, "quantity" | "unit" | "name">): WrittenUnit =>
  (shakes(channel) ? SHAKING[channel.quantity] : undefined) ?? WRITTEN[channel.quantity];
