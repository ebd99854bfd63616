import type { BeforeAfter } from "@halfturn/engine/correction";
import { fuseGauging, type PoseModel } from "@halfturn/engine/gauging";
import type { ChosenGauging } from "../convert/latest-gaugings.js";
import { acceptedCodes } from "../convert/to-analysis-input.js";
import { type CorrectionSettings, toCorrectionInput } from "../convert/to-correction-input.js";
import { toDriveline } from "../convert/to-driveline.js";
import { toGauging } from "../convert/to-gauging.js";
import type { Case, CaseCorrection } from "../schema/case.js";
import { engineChange } from "./amounts.js";

/** A correction of the case that was gauged again. */
export interface GaugedCorrection extends BeforeAfter {
  /** Its place in `corrections`. */
  readonly correction: number;
  /** The gauging after, of each driveline that has one. */
  readonly gaugings: readonly ChosenGauging[];
}

/**
 * Every correction that a later gauging of stage `after` can be held against, as what was predicted from and what was found. A gauging counts for the last
 * correction before it; one that a stop finding spoils counts for none. Of several the last one speaks.
 */
export const beforeAfterPairs = (document: Case, settings: CorrectionSettings): readonly GaugedCorrection[] =>
  (document.corrections ?? []).flatMap((correction, index) => {
    const gaugings = gaugingsAfter(document, index);
    if (gaugings.length === 0) return [];
    const chosen = gaugingsBefore(document, index);
    const after = gaugings.flatMap((one) => posesOf(document, one, settings));
    if (chosen.length === 0 || after.length === 0) return [];
    return [
      {
        correction: index,
        gaugings,
        before: toCorrectionInput(document, { ...settings, chosen }),
        changes: correction.changes.map(engineChange),
        after: Object.fromEntries(after),
      },
    ];
  });

type Gauged = ChosenGauging & { readonly gauging: number };
type Basis = CaseCorrection["basis"][number];

const basisOf = (document: Case, correction: number): readonly Basis[] => document.corrections?.[correction]?.basis ?? [];

/** What a correction, by its place in `corrections`, was worked out from; a gauging that the case no longer holds is left out. */
export const gaugingsBefore = (document: Case, correction: number): readonly Gauged[] =>
  basisOf(document, correction).flatMap(({ driveline, gauging }) => {
    const at = document.drivelines.findIndex(({ id }) => id === driveline);
    return at < 0 || document.gauging?.[gauging]?.driveline !== driveline ? [] : [{ driveline: at, gauging }];
  });

/** What was gauged after a correction and before the next one, the last of each driveline. */
export const gaugingsAfter = (document: Case, correction: number): readonly Gauged[] =>
  basisOf(document, correction).flatMap((basis) => gaugedAfter(document, correction, basis));

function gaugedAfter(document: Case, index: number, { driveline, gauging }: Basis): readonly Gauged[] {
  const all = document.gauging ?? [];
  const next = (document.corrections ?? [])
    .slice(index + 1)
    .flatMap(({ basis }) => basis.flatMap((one) => (one.driveline === driveline && one.gauging > gauging ? [one.gauging] : [])))
    .at(0);
  const last = all.findLastIndex(
    (one, k) => one.driveline === driveline && one.stage === "after" && k > gauging && (next === undefined || k <= next),
  );
  const at = document.drivelines.findIndex(({ id }) => id === driveline);
  return last < 0 || at < 0 ? [] : [{ driveline: at, gauging: last }];
}

function posesOf(
  document: Case,
  { driveline: index, gauging }: Gauged,
  { accepted = [] }: CorrectionSettings,
): readonly (readonly [id: string, poses: PoseModel])[] {
  const driveline = toDriveline(document, index, gauging);
  const poses = fuseGauging(toGauging(document, gauging), driveline);
  const taken = [...acceptedCodes(document), ...accepted];
  const stopped = poses.findings.some(({ code, severity }) => severity === "stop" && !taken.includes(code));
  return stopped ? [] : [[driveline.id, poses]];
}
