import { FINDING_CODES, type FindingCode } from "@halfturn/engine/findings";
import { closest, distance } from "fastest-levenshtein";
import type { CliContext } from "../program/context.js";

/** Further apart than this, a suggestion would be a guess. */
const NEAR_EDITS = 4;

/** A finding's code as typed on the command line. Throwing is how a flag's parser reports. */
export function parseFindingCode(this: CliContext, input: string): FindingCode {
  const code = FINDING_CODES.find((candidate) => candidate === input);
  if (code) return code;
  const near = closest(input, FINDING_CODES);
  throw new Error(this.words.terminal.usage.findingCode(distance(input, near) <= NEAR_EDITS ? near : ""));
}

export const completeFindingCode = (partial: string): readonly string[] => FINDING_CODES.filter((code) => code.startsWith(partial));
