import type { FindingParams } from "@halfturn/engine/findings";
import type { Numbers } from "./numbers/numbers.js";
import { written } from "./problem-words.js";

/** What a person calls the things that reasons and instructions speak of. */
export interface CorrectionNames {
  readonly adjuster: (id: string) => string;
  readonly state: (id: string) => string;
  readonly driveline: (id: string) => string;
  /** A shaft, section or joint; of the first driveline that has one of that id where no driveline is named. */
  readonly part: (id: string, driveline?: string) => string;
}

/** Reads the data of a reason or an instruction for a sentence. A missing number reads as an ellipsis, so that a sentence never breaks off in an error. */
export interface CorrectionReader {
  readonly numbers: Numbers;
  readonly has: (key: string) => boolean;
  readonly is: (key: string, value: string | number | boolean) => boolean;
  readonly text: (key: string) => string;
  /** The number itself; 0 where there is none. */
  readonly value: (key: string) => number;
  /** A number as it is, without a unit. */
  readonly plain: (key: string) => string;
  /** Sizes without their sign: what the sign means is left to a word. */
  readonly length: (key: string) => string;
  /** A length that somebody has to buy or stack parts to. */
  readonly partSize: (key: string) => string;
  readonly angle: (key: string) => string;
  /** An angle with its sign. */
  readonly signedAngle: (key: string) => string;
  readonly adjuster: string;
  readonly driveline: string;
  readonly state: string;
  readonly states: (key: string) => readonly string[];
  /** The name of the part whose id stands under the key. */
  readonly part: (key: string) => string;
}

/** Limits of a driveline as a whole: what they are about is the driveline, not one of its parts. */
export const isOfWhole = (limit: string): boolean => limit === "equivalent-angle" || limit === "driven-acceleration";

const UNKNOWN = "…";
/** A wedge is made to a tenth of a degree and a phasing is known to a hundredth. */
const ANGLE_DECIMALS = 2;

const shortened = (value: number, decimals: number, numbers: Numbers): string => written(Number(value.toFixed(decimals)) + 0, numbers);

/** "2.5°": no more decimals than the angle has, two at most. */
export const shortAngle = (degrees: number, numbers: Numbers): string => `${shortened(degrees, ANGLE_DECIMALS, numbers)}°`;

export function correctionReader(params: FindingParams, names: CorrectionNames, numbers: Numbers): CorrectionReader {
  const text = (key: string): string => (params[key] === undefined ? UNKNOWN : String(params[key]));
  const format = (key: string, by: (value: number) => string): string => {
    const value = params[key];
    return typeof value === "number" ? by(value) : UNKNOWN;
  };
  const value = (key: string): number => (typeof params[key] === "number" ? (params[key] as number) : 0);
  const driveline = params.driveline === undefined ? undefined : text("driveline");
  const list = (key: string): readonly string[] => {
    const entry = params[key];
    return Array.isArray(entry) ? (entry as readonly string[]) : [];
  };
  return {
    numbers,
    has: (key) => params[key] !== undefined,
    is: (key, wanted) => params[key] === wanted,
    text,
    value,
    plain: (key) => format(key, (number) => shortened(number, 3, numbers)),
    length: (key) => format(key, (number) => numbers.length(Math.abs(number))),
    partSize: (key) => format(key, (number) => numbers.partSize(Math.abs(number))),
    angle: (key) => format(key, (number) => shortAngle(Math.abs(number), numbers)),
    signedAngle: (key) => format(key, (number) => shortAngle(number, numbers)),
    adjuster: names.adjuster(text("adjuster")),
    driveline: driveline === undefined ? UNKNOWN : names.driveline(driveline),
    state: names.state(text("state")),
    states: (key) => list(key).map(names.state),
    part: (key) =>
      key === "of" && driveline !== undefined && isOfWhole(text("limit")) ? names.driveline(driveline) : names.part(text(key), driveline),
  };
}
