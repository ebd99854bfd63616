import type { LookedChannel } from "../../../worker/listening/listening-types.js";

/** Units as people write them, by their spelling in the name of a column. */
const WRITTEN: Readonly<Record<string, string>> = { ms2: "m/s²", "m/s^2": "m/s²", kmh: "km/h", mps: "m/s", rads: "rad/s", pa: "Pa" };

/** "accel_z (m/s²)": what a channel is called, and its unit where it has one. */
export const channelText = ({ name, unit }: Pick<LookedChannel, "name" | "unit">): string =>
  unit === null ? name : `${name} (${WRITTEN[unit] ?? unit})`;
