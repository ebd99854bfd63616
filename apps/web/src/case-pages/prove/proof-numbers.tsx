import type { Estimate, Verdict } from "@halfturn/engine/analysis";
import type { CorrectedDriveline, CorrectionSubject } from "@halfturn/report/browser";
import { VerdictMark } from "../../controls/verdict-mark.js";
import { useWords } from "../../words/use-words.js";
import { valueText } from "../shared/estimate-text.js";
import { toneOf } from "../shared/tone.js";
import styles from "./prove-page.module.css";
import { proveWords } from "./prove-words.js";

interface Row {
  readonly name: string;
  readonly before: Estimate | null;
  /** Degrees. */
  readonly foretold: number | null;
  readonly after: Estimate | null;
  readonly verdict: Verdict;
}

export interface ProofNumbersProps {
  readonly subject: CorrectionSubject;
  readonly on: CorrectedDriveline;
}

/** Each joint and what they leave: as found, foretold, measured, and whether what was measured is within its limits. */
export const ProofNumbers = ({ subject, on }: ProofNumbersProps) => {
  const words = useWords(proveWords);
  const { catalogue, numbers } = subject;
  const { correction, labels } = catalogue;
  const { before, after } = on;
  if (!after) return null;
  const foretold = on.foretold.find(({ asGauged }) => asGauged)?.of;
  const rows: readonly Row[] = [
    ...after.analysis.joints.map(({ id, operatingAngle, verdict }) => ({
      name: on.nameOf(id),
      before: before?.analysis.joints.find((joint) => joint.id === id)?.operatingAngle ?? null,
      foretold: foretold?.joints.find((joint) => joint.id === id)?.operatingAngleDeg?.value ?? null,
      after: operatingAngle,
      verdict,
    })),
    {
      name: labels.equivalentAngle,
      before: before?.analysis.cancellation.equivalentAngle ?? null,
      foretold: foretold?.equivalentAngleDeg?.value ?? null,
      after: after.analysis.cancellation.equivalentAngle,
      verdict: after.analysis.cancellation.verdict,
    },
  ];
  return (
    <div className={styles.numbers}>
      {rows.map((row) => (
        <dl key={row.name} className={styles.row}>
          <div className={styles.name}>
            <dt>{row.name}</dt>
            <dd>
              <VerdictMark tone={toneOf(row.verdict)}>{labels.verdicts[row.verdict]}</VerdictMark>
            </dd>
          </div>
          <div>
            <dt>{words.before}</dt>
            <dd>{valueText(row.before, numbers, "–")}</dd>
          </div>
          <div>
            <dt>{correction.foretold}</dt>
            <dd>{row.foretold === null ? "–" : numbers.angle(row.foretold)}</dd>
          </div>
          <div>
            <dt>{correction.measured}</dt>
            <dd className={styles.measured}>{valueText(row.after, numbers, "–")}</dd>
          </div>
        </dl>
      ))}
    </div>
  );
};
