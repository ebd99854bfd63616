import type { Finding } from "../findings/index.js";
import { angleBetween, directionOf, type ShaftPose } from "../geometry/index.js";
import { degreesToRadians, type Radians, radiansToDegrees } from "../units/index.js";
import type { UncheckedShaft } from "./unchecked-shafts.js";

/** Joint angles beside a shaft that add up to more than this are worth a second look (common practice, no source). */
const LARGE_SUM = degreesToRadians(6);
/** The other lower end must leave less than this share of them. */
const SHRUNK_SHARE = 0.5;

const mirrored = ({ inclination, heading }: ShaftPose): ShaftPose => ({ inclination: -inclination as Radians, heading });

/** Operating angles, in radians, of the joints beside a shaft if it lay so. */
const anglesBeside = (pose: ShaftPose, neighbours: readonly ShaftPose[]): readonly number[] =>
  neighbours.map((neighbour) => angleBetween(directionOf(pose), directionOf(neighbour)));

const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0);

/**
 * Asks to look again where nothing checks the lower end of a shaft and the other end would make every joint beside it much straighter.
 * poses: of the shafts in power order, null where unknown; the shaft itself and a neighbour must be known.
 */
export function lowerEndFinding(
  { shaft, path }: UncheckedShaft,
  shafts: readonly string[],
  poses: readonly (ShaftPose | null)[],
): readonly Finding[] {
  const index = shafts.indexOf(shaft);
  const pose = poses[index];
  const beside = [poses[index - 1], poses[index + 1]].flatMap((neighbour) => neighbour ?? []);
  if (!pose || beside.length === 0) return [];
  const asRead = anglesBeside(pose, beside);
  const otherwise = anglesBeside(mirrored(pose), beside);
  const shrinksAll = asRead.every((angle, k) => (otherwise[k] ?? 0) < angle);
  if (sum(asRead) <= LARGE_SUM || sum(otherwise) >= SHRUNK_SHARE * sum(asRead) || !shrinksAll) return [];
  const params = {
    shaft,
    inclinationDeg: radiansToDegrees(pose.inclination),
    anglesDeg: radiansToDegrees(sum(asRead) as Radians),
    mirroredAnglesDeg: radiansToDegrees(sum(otherwise) as Radians),
  };
  return [{ code: "gauging.check-lower-end", severity: "note", path, params }];
}
