import type { DrivelineAnalysis } from "@halfturn/engine/analysis";
import { VerdictMark } from "../../controls/verdict-mark.js";
import { useWords } from "../../words/use-words.js";
import { angleOf, intervalText, valueText } from "../shared/estimate-text.js";
import type { Subject } from "../shared/subject.js";
import { toneOf } from "../shared/tone.js";
import { explainWords } from "./explain-words.js";
import styles from "./joint-list.module.css";

export interface JointListProps {
  readonly subject: Subject;
  readonly analysis: DrivelineAnalysis;
  /** What the gauging gave, beside what is only tried; null while nothing is. */
  readonly measured: DrivelineAnalysis | null;
}

/** Every joint with its angle, what it may run at, and the verdict in words. */
export const JointList = ({ subject: { input, nameOf, catalogue }, analysis, measured }: JointListProps) => {
  const words = useWords(explainWords);
  const { labels, numbers } = catalogue;
  return (
    <ul className={styles.joints}>
      {analysis.joints.map(({ id, operatingAngle, minimum, maximum, verdict }, k) => {
        const kind = input.driveline.joints[k]?.kind ?? "cross";
        return (
          <li key={id} className={styles.joint}>
            <div className={styles.name}>
              <strong>{nameOf(id)}</strong>
              <span className={styles.quiet}>{labels.jointKinds[kind]}</span>
            </div>
            <div className={styles.value}>
              <span className={styles.angle}>{valueText(operatingAngle, numbers, labels.notKnown)}</span>{" "}
              <span className={styles.quiet}>
                {measured
                  ? words.measuredAt(valueText(measured.joints[k]?.operatingAngle ?? null, numbers, labels.notKnown))
                  : intervalText(operatingAngle, numbers)}
              </span>
            </div>
            <div className={styles.verdict}>
              <VerdictMark tone={toneOf(verdict)}>{labels.verdicts[verdict]}</VerdictMark>
              <span className={styles.quiet}>
                {minimum > 0
                  ? words.allowed(angleOf(minimum, numbers), angleOf(maximum, numbers))
                  : words.atMost(angleOf(maximum, numbers))}
              </span>
            </div>
          </li>
        );
      })}
    </ul>
  );
};
