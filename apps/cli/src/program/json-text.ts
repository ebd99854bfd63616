import { spacesByCode } from "./typed-spaces.js";

/** A value as JSON to be printed, with its last line's end. */
export const jsonText = (value: unknown): string => `${spacesByCode(JSON.stringify(value, null, 2))}\n`;
