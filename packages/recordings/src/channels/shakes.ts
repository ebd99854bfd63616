import type { Channel } from "../recording.js";
import { unitFor } from "./column-name.js";
import type { ChannelQuantity } from "./unit-table.js";

/** Quantities that a vehicle has on the road and a floor that shakes has too. */
export const MOVES: readonly ChannelQuantity[] = ["velocity", "displacement"];

/** Units below this, SI, are no measure of a road: mm/s and in/s, mm, in and mil are; m/s, km/h and m are not. */
const SMALL = 0.1;
/** An axis at the end of a name: `vel_z`, "Displacement X". */
const AXIS = /[_ -][xyz]$/i;

/** Whether a velocity or a displacement is that of a vibration and not of the drive: by its unit, or by an axis in its name. */
export const shakes = ({ quantity, unit, name }: Pick<Channel, "quantity" | "unit" | "name">): boolean =>
  MOVES.includes(quantity) && (AXIS.test(name) || (unit !== null && (unitFor(name, unit)?.factor ?? 1) < SMALL));
