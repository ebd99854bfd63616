import type { PredictedDriveline, PredictedState } from "@halfturn/engine/correction";
import { VerdictMark } from "../../controls/verdict-mark.js";
import { useWords } from "../../words/use-words.js";
import { valueText } from "../shared/estimate-text.js";
import { toneOf } from "../shared/tone.js";
import styles from "./correct-page.module.css";
import { correctWords } from "./correct-words.js";
import type { CorrectionView } from "./correction-view.js";

export interface StatesListProps {
  readonly states: readonly PredictedState[];
  readonly view: CorrectionView;
}

/** How every joint will run in every state, and what they leave together. */
export const StatesList = ({ states, view }: StatesListProps) => (
  <ul className={styles.states}>
    {states.map(({ id, drivelines }) => (
      <li key={id}>
        <h4 className={styles.state}>{view.names.state(id)}</h4>
        {drivelines.map((driveline) => (
          <DrivelineMarks key={driveline.drivelineId} driveline={driveline} named={drivelines.length > 1} view={view} />
        ))}
      </li>
    ))}
  </ul>
);

interface DrivelineMarksProps {
  readonly driveline: PredictedDriveline;
  readonly named: boolean;
  readonly view: CorrectionView;
}

const DrivelineMarks = ({ driveline, named, view }: DrivelineMarksProps) => {
  const words = useWords(correctWords);
  const { labels, numbers } = view.catalogue;
  const { joints, cancellation, motion, slipVerdict, geometry } = driveline;
  const marks = [
    ...joints.map(({ id, operatingAngle, verdict }) => ({ name: id, value: valueText(operatingAngle, numbers, "–"), verdict })),
    { name: words.left, value: valueText(cancellation.equivalentAngle, numbers, "–"), verdict: cancellation.verdict },
    { name: words.motion, value: "", verdict: motion.verdict },
    ...(slipVerdict === "not-gauged" ? [] : [{ name: view.catalogue.correction.slipTravel, value: "", verdict: slipVerdict }]),
  ];
  return (
    <div>
      {named ? <p className={styles.quiet}>{view.names.driveline(driveline.drivelineId)}</p> : null}
      <ul className={styles.marks}>
        {marks.map(({ name, value, verdict }) => (
          <li key={name}>
            <VerdictMark tone={toneOf(verdict)}>
              {name} {value}
              <span className={styles.spoken}>, {labels.verdicts[verdict]}</span>
            </VerdictMark>
          </li>
        ))}
      </ul>
      {geometry === "angles-only" ? <p className={styles.quiet}>{view.catalogue.correction.anglesOnly}</p> : null}
    </div>
  );
};
