import type { AnalysedDriveline } from "@halfturn/casefile";
import type { Finding, FindingCode } from "@halfturn/engine/findings";

/** A reading that is likely wrong, and what to do about it. */
export interface Slip {
  readonly finding: Finding;
  /** Tells this slip from others and from itself after the readings changed. */
  readonly key: string;
  /** Readings that it speaks of, by index in the gauging; the one to take again first. */
  readonly readings: readonly number[];
  /** The reading whose lower end is likely noted the wrong way round. */
  readonly turn: number | null;
  /** Whether it may be looked at and left as it is. */
  readonly canStand: boolean;
}

/** What names the slip comes before what only says that something does not fit. */
const SLIP_ORDER: readonly FindingCode[] = [
  "gauging.wrong-side-of-level",
  "gauging.rows-swapped",
  "gauging.not-zeroed",
  "gauging.tube-ends-disagree",
  "gauging.repeats-disagree",
  "gauging.difference-disagrees",
  "gauging.sides-disagree",
  "gauging.zero-check-disagrees",
  "gauging.check-lower-end",
];

const TURNABLE: readonly FindingCode[] = ["gauging.wrong-side-of-level", "gauging.check-lower-end"];

/** The index of a reading of one gauging that a path names; null for any other path. */
export function readingAt(path: string, gauging: number): number | null {
  const match = /^gauging\[(\d+)\]\.readings\[(\d+)\]/.exec(path);
  return match && Number(match[1]) === gauging ? Number(match[2]) : null;
}

const pathsOf = ({ params, path }: Finding): readonly string[] => {
  const likelier = typeof params.likelier === "string" ? [params.likelier] : [];
  const readings = Array.isArray(params.readings) ? (params.readings as readonly string[]) : [];
  return [...likelier, path, ...readings];
};

/** The slips that the latest calculation sees in a gauging, the plainest first. */
export function slipsOf(analysed: AnalysedDriveline | null, gauging: number): readonly Slip[] {
  const findings = analysed?.gauging === gauging ? analysed.analysis.findings : [];
  return SLIP_ORDER.flatMap((code) => findings.filter((finding) => finding.code === code)).map((finding) => {
    const readings = [...new Set(pathsOf(finding).flatMap((path) => readingAt(path, gauging) ?? []))];
    const turn = TURNABLE.includes(finding.code) ? (readings[0] ?? null) : null;
    return {
      finding,
      key: `${finding.code} ${finding.path} ${JSON.stringify(finding.params)}`,
      readings,
      turn,
      canStand: finding.code === "gauging.check-lower-end",
    };
  });
}

/** What else would make the result surer, once every place was read. */
const ADVICE: readonly FindingCode[] = [
  "gauging.level-not-read",
  "gauging.sides-mixed",
  "gauging.zero-not-checked",
  "gauging.no-check-reading",
  "gauging.heading-not-measured",
];

export const adviceOf = (analysed: AnalysedDriveline | null, gauging: number): readonly Finding[] =>
  analysed?.gauging === gauging ? analysed.analysis.findings.filter(({ code }) => ADVICE.includes(code)) : [];
