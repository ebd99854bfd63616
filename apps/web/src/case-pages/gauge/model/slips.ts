import type { AnalysedDriveline, CaseGauging } from "@halfturn/casefile";
import type { Finding, FindingCode } from "@halfturn/engine/findings";

/** A reading that is likely wrong, and what to do about it. */
export interface Slip {
  readonly finding: Finding;
  /** Tells this slip from others and from itself after the readings changed. */
  readonly key: string;
  /** Readings that it speaks of, by index in the gauging; the one to take again first. */
  readonly readings: readonly number[];
  /** The shaft that one has to look at: which of its ends is lower? Null where that is not what is asked, or the answer would not mend it. */
  readonly lowerEndOf: string | null;
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

const ASKING_LOWER_END: readonly FindingCode[] = ["gauging.wrong-side-of-level", "gauging.check-lower-end"];

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

/** The slips that the latest calculation sees in `gauging[index]`, the plainest first. */
export function slipsOf(analysed: AnalysedDriveline | null, index: number, gauging: CaseGauging): readonly Slip[] {
  const findings = analysed?.gauging === index ? analysed.analysis.findings : [];
  return SLIP_ORDER.flatMap((code) => findings.filter((finding) => finding.code === code)).map((finding) => {
    const readings = [...new Set(pathsOf(finding).flatMap((path) => readingAt(path, index) ?? []))];
    return {
      finding,
      key: `${finding.code} ${finding.path} ${JSON.stringify(finding.params)}`,
      readings,
      lowerEndOf: lowerEndOf(finding, readings, gauging),
    };
  });
}

/** A zeroed reading notes its lower end against another shaft; looking at one shaft does not answer that. */
function lowerEndOf({ code, params }: Finding, readings: readonly number[], gauging: CaseGauging): string | null {
  if (!ASKING_LOWER_END.includes(code) || typeof params.shaft !== "string") return null;
  return readings.length > 0 && readings.every((k) => "at" in (gauging.readings[k] ?? {})) ? params.shaft : null;
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
