import { type Case, type CaseDriveline, type CaseGauging, phasingAt } from "@halfturn/casefile";

/** Yokes as they usually stand. */
export const USUAL_PHASINGS_DEG = { "in-line": 0, "quarter-turn": 90 } as const;

export type Phasing = keyof typeof USUAL_PHASINGS_DEG | "other";

/** How a phasing is called; yokes look the same after half a turn. */
export function phasingNamed(phasingDeg: number): Phasing {
  const turned = ((phasingDeg % 180) + 180) % 180;
  if (turned === 0) return "in-line";
  return turned === 90 ? "quarter-turn" : "other";
}

/** Notes how a section was phased when this gauging was taken, in degrees; null takes the note away. */
export function withPhasing(gauging: CaseGauging, section: string, phasingDeg: number | null): CaseGauging {
  const { phasings = [], ...bare } = gauging;
  const others = phasings.filter((one) => one.section !== section);
  const all = phasingDeg === null ? others : [...others, { section, phasingDeg }];
  return all.length === 0 ? bare : { ...bare, phasings: all };
}

/** Whether somebody has seen how every section was phased when `gauging[index]` was taken. */
export const areAllSeen = (document: Case, driveline: CaseDriveline, index: number): boolean =>
  driveline.sections.every((section) => phasingAt(document, driveline, section, index).measured);
