import type { DrivelineAnalysis } from "@halfturn/engine/analysis";
import { benchSigns } from "@halfturn/engine/kinematics";
import { degreesToRadians } from "@halfturn/engine/units";
import { cancellationView, type FigureOptions } from "@halfturn/figures";
import { useCallback } from "react";
import { Card } from "../../controls/card.js";
import { Figure } from "../../controls/figure.js";
import { VerdictMark } from "../../controls/verdict-mark.js";
import type { Settings } from "../../device/settings.js";
import { useWords } from "../../words/use-words.js";
import { angleOf, degreesOf, intervalText, valueText } from "../shared/estimate-text.js";
import type { Subject } from "../shared/subject.js";
import { toneOf } from "../shared/tone.js";
import styles from "./explain-page.module.css";
import { explainWords } from "./explain-words.js";

const BENCH_TONES = { met: "good", acceptable: "good", exceeded: "bad" } as const;
/** A phasing this near the best one is the best one: half a tooth of a fine spline. */
const NEARLY_BEST = degreesToRadians(5);

/** How far apart two phasings are, which repeat every half turn. */
const apart = (a: number, b: number): number => Math.abs(Math.atan2(Math.sin(2 * (a - b)), Math.cos(2 * (a - b)))) / 2;

export interface ResultProps {
  readonly subject: Subject;
  readonly analysis: DrivelineAnalysis;
  readonly settings: Settings;
}

/** Whether the joints undo one another: the arrows, the exact answer beside the bench rule, and why the two differ. */
export const CancellationCard = ({ subject, analysis, settings }: ResultProps) => {
  const words = useWords(explainWords);
  const { catalogue, input, nameOf, picture } = subject;
  const { labels, numbers, explanations } = catalogue;
  const { equivalentAngle, equivalentMaximum, verdict, benchResidual, benchVerdict, bestPhasing } = analysis.cancellation;
  const draw = useCallback((options: FigureOptions) => cancellationView({ ...picture, analysis }, options), [picture, analysis]);
  const angles = analysis.joints.map(({ operatingAngle }) => operatingAngle);
  return (
    <Card title={labels.cancellation}>
      <div className={styles.pair}>
        <div>
          <h3>{words.exact}</h3>
          <p className={styles.big}>{valueText(equivalentAngle, numbers, labels.notKnown)}</p>
          <p className={styles.quiet}>
            {intervalText(equivalentAngle, numbers)} · {labels.upTo(angleOf(equivalentMaximum, numbers))}
          </p>
          <VerdictMark tone={toneOf(verdict)}>{labels.verdicts[verdict]}</VerdictMark>
        </div>
        <div>
          <h3>{words.bench}</h3>
          <p className={styles.big}>{benchResidual ? valueText(benchResidual, numbers, "") : "–"}</p>
          <p className={styles.quiet}>
            {benchResidual
              ? words.benchTargets(angleOf(input.limits.benchMet.value, numbers), angleOf(input.limits.benchAccepted.value, numbers))
              : words.noBench}
          </p>
          {benchVerdict ? <VerdictMark tone={BENCH_TONES[benchVerdict]}>{labels.benchVerdicts[benchVerdict]}</VerdictMark> : null}
        </div>
      </div>
      {equivalentAngle ? (
        <p>
          {explanations.bench({
            anglesDeg: angles.every((angle) => angle !== null) ? angles.map(({ value }) => degreesOf(value)) : [],
            signs: benchSigns(input.driveline),
            benchDeg: benchResidual ? degreesOf(benchResidual.value) : null,
            equivalentDeg: degreesOf(equivalentAngle.value),
          })}
        </p>
      ) : null}
      <Figure settings={settings} draw={draw} />
      {input.driveline.sections.map(({ id, phasing }) => {
        const best = bestPhasing[id];
        return best === undefined || (phasing !== null && apart(best, phasing) < NEARLY_BEST) ? null : (
          <p key={id}>{explanations.bestPhasing(nameOf(id), degreesOf(best))}</p>
        );
      })}
    </Card>
  );
};
