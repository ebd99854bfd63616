import type { AdjusterKind, Change, CorrectionInput } from "@halfturn/engine/correction";
import { degreesToRadians, type Radians, radiansToDegrees } from "@halfturn/engine/units";

/** The unit in which files and commands write an adjuster's amounts. */
export type FileUnit = "deg" | "mm" | "step";

/** One use of an adjuster as files, commands and the contract write it. */
export interface WrittenChange {
  readonly adjuster: string;
  readonly amount: number;
  readonly unit: FileUnit;
}

export const fileUnitOf = (kind: AdjusterKind): FileUnit => (kind === "axle-wedge" ? "deg" : kind === "rephase" ? "step" : "mm");

/** Digits beyond these are the rounding of the way to SI and back. */
const SIGNIFICANT_DIGITS = 12;
const rounded = (value: number): number => Number(value.toPrecision(SIGNIFICANT_DIGITS)) + 0;

/** An amount of the engine (radians, metres, steps) in the unit of the file, without the rounding of the way there and back. */
export function writtenAmount(amount: number, unit: FileUnit): number {
  if (unit === "deg") return rounded(radiansToDegrees(amount as Radians));
  return unit === "mm" ? rounded(amount * 1000) : amount;
}

/** An amount of the file as the engine knows it. */
export function engineAmount(amount: number, unit: FileUnit): number {
  if (unit === "deg") return degreesToRadians(amount);
  return unit === "mm" ? amount / 1000 : amount;
}

/** A change of the engine as it is written; every change names an adjuster of the input. */
export function writtenChange({ adjusters }: Pick<CorrectionInput, "adjusters">, { adjusterId, amount }: Change): WrittenChange {
  const adjuster = adjusters.find(({ id }) => id === adjusterId);
  if (!adjuster) throw new RangeError(`no adjuster ${adjusterId} in this input`);
  const unit = fileUnitOf(adjuster.kind);
  return { adjuster: adjusterId, amount: writtenAmount(amount, unit), unit };
}

export const engineChange = ({ adjuster, amount, unit }: WrittenChange): Change => ({
  adjusterId: adjuster,
  amount: engineAmount(amount, unit),
});
