import type { Case, CaseCorrection, CaseDriveline, CaseSection } from "../schema/case.js";
import { cameBefore } from "./came-before.js";

/** How a section was phased when a gauging was taken, degrees; null = not known. */
export interface PhasingAt {
  readonly phasingDeg: number | null;
  readonly measured: boolean;
}

/**
 * The phasing of a section at `gauging[at]`: what the file says of the section, then in the order of the driveline's gaugings up to that one what corrections
 * turned before each, which nobody has seen yet, and what was seen at each. Without a gauging, as the file says of the section.
 */
export function phasingAt(document: Case, { id }: CaseDriveline, section: CaseSection, at: number | null): PhasingAt {
  let now: PhasingAt = { phasingDeg: section.phasingDeg ?? null, measured: section.phasingMeasured ?? false };
  if (at === null) return now;
  let waiting = document.corrections ?? [];
  (document.gauging ?? []).slice(0, at + 1).forEach((gauging, k) => {
    if (gauging.driveline !== id) return;
    const turnDeg = waiting.filter((one) => cameBefore(one, id, k)).reduce((sum, one) => sum + turnOf(document, one, id, section.id), 0);
    waiting = waiting.filter((one) => !cameBefore(one, id, k));
    if (turnDeg !== 0) now = { phasingDeg: now.phasingDeg === null ? null : now.phasingDeg + turnDeg, measured: false };
    const seen = gauging.phasings?.find((one) => one.section === section.id);
    if (seen) now = { phasingDeg: seen.phasingDeg, measured: true };
  });
  return now;
}

/** What a correction turned a section's driven-end yoke against its source-end yoke, degrees. */
const turnOf = (document: Case, { changes }: CaseCorrection, driveline: string, section: string): number =>
  changes.reduce((sum, { adjuster: id, amount }) => {
    const adjuster = document.adjusters?.find((one) => one.id === id);
    const turns = adjuster?.kind === "rephase" && adjuster.driveline === driveline && adjuster.section === section;
    return turns ? sum + (amount * 360) / adjuster.splineTeeth : sum;
  }, 0);
