import { type Estimate, estimateVerdict } from "@halfturn/engine/analysis";
import { accelerationChart, type FigureOptions } from "@halfturn/figures";
import { useCallback } from "react";
import { Card } from "../../controls/card.js";
import { Figure } from "../../controls/figure.js";
import { VerdictMark } from "../../controls/verdict-mark.js";
import { useWords } from "../../words/use-words.js";
import { toneOf } from "../shared/tone.js";
import type { ResultProps } from "./cancellation-card.js";
import styles from "./explain-page.module.css";
import { explainWords } from "./explain-words.js";

interface Row {
  readonly name: string;
  readonly estimate: Estimate | null;
  readonly limit: number;
}

/** How hard the shafts are shaken, at the highest speed in figures and over all speeds in the chart. */
export const MotionCard = ({ subject, analysis, settings }: ResultProps) => {
  const words = useWords(explainWords);
  const { catalogue, input, nameOf, picture } = subject;
  const { labels, numbers } = catalogue;
  const { limits } = input;
  const draw = useCallback(
    (options: FigureOptions) => accelerationChart({ ...picture, analysis }, limits, options),
    [picture, analysis, limits],
  );
  const fastest = analysis.motion.speeds.at(-1);
  if (!fastest) return null;
  const rows: readonly Row[] = [
    { name: labels.drivenAcceleration, estimate: fastest.drivenAcceleration, limit: limits.drivenAccelerationOver.value },
    ...fastest.drive.map(({ section, acceleration }) => ({
      name: `${nameOf(section)}, ${labels.drive}`,
      estimate: acceleration,
      limit: limits.inertiaDrive.value,
    })),
    ...fastest.coast.map(({ section, acceleration }) => ({
      name: `${nameOf(section)}, ${labels.coast}`,
      estimate: acceleration,
      limit: limits.inertiaCoast.value,
    })),
  ];
  const { verdict } = analysis.motion;
  return (
    <Card title={words.motion} aside={<VerdictMark tone={toneOf(verdict)}>{labels.verdicts[verdict]}</VerdictMark>}>
      <p>{words.motionAt(numbers.speed(fastest.shaftSpeed))}:</p>
      <ul className={styles.rows}>
        {rows.map(({ name, estimate, limit }) => {
          const judged = analysis.withheld && estimate ? "withheld" : estimateVerdict(estimate, { maximum: limit });
          return (
            <li key={name} className={styles.row}>
              <span>{name}</span>
              <strong>{estimate ? numbers.acceleration(estimate.value) : labels.notKnown}</strong>
              <span className={styles.judged}>
                <VerdictMark tone={toneOf(judged)}>{labels.verdicts[judged]}</VerdictMark>
                <span className={styles.quiet}>{words.limit(numbers.acceleration(limit))}</span>
              </span>
            </li>
          );
        })}
      </ul>
      <Figure settings={settings} draw={draw} />
    </Card>
  );
};
