import type { Case } from "../schema/case.js";

/** Which steps of the main flow have something in them. */
export interface Progress {
  readonly gauged: boolean;
  /** A correction was made; one that is only chosen is none yet. */
  readonly corrected: boolean;
  readonly proved: boolean;
}

export const progressOf = ({ gauging = [], corrections = [] }: Pick<Case, "gauging" | "corrections">): Progress => ({
  gauged: gauging.length > 0,
  corrected: corrections.some(({ state }) => state === "made"),
  proved: gauging.some(({ stage }) => stage === "after"),
});
