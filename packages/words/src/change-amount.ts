import type { FileUnit } from "@halfturn/casefile";
import type { Numbers } from "./numbers/numbers.js";
import { written } from "./problem-words.js";

const SUFFIX: Readonly<Record<FileUnit, string>> = { deg: "°", mm: "\u00a0mm", step: "" };

const inInches = (unit: FileUnit, { units }: Numbers): boolean => unit === "mm" && units === "us";

/** An amount of a change to the last digit that it has: what is typed next to it must not miss it by rounding. */
export const changeAmount = (amount: number, unit: FileUnit, numbers: Numbers): string =>
  inInches(unit, numbers) ? numbers.partSize(amount) : `${written(amount, numbers)}${SUFFIX[unit]}`;

/** The first of two amounts, whose unit the second has; inches carry their millimetres and so need their own. */
export const firstChangeAmount = (amount: number, unit: FileUnit, numbers: Numbers): string =>
  inInches(unit, numbers) ? numbers.partSize(amount) : written(amount, numbers);
