import { type Case, latestGaugings } from "@halfturn/casefile";
import type { PredictedDriveline, PredictedState } from "@halfturn/engine/correction";
import { fromSi, metres } from "@halfturn/engine/units";
import { comparisonView, drivelinePictureOf, type FigureOptions } from "@halfturn/figures";
import { slipTravelText } from "@halfturn/words";
import { useCallback, useMemo } from "react";
import { Figure } from "../../../controls/figure.js";
import { useFollowed } from "../../../controls/use-followed.js";
import { VerdictMark } from "../../../controls/verdict-mark.js";
import type { Settings } from "../../../device/settings.js";
import { useWords } from "../../../words/use-words.js";
import { valueText } from "../../shared/estimate-text.js";
import { toneOf } from "../../shared/tone.js";
import styles from "../correct-page.module.css";
import type { CorrectionView } from "../correction-view.js";
import own from "./try-card.module.css";
import { tryWords } from "./try-words.js";

export interface ForetoldFiguresProps {
  /** The same state with nothing changed. */
  readonly before: PredictedState | null;
  readonly after: PredictedState;
  /** Whether anything was changed at all. */
  readonly changed: boolean;
  readonly document: Case;
  readonly view: CorrectionView;
  readonly settings: Settings;
}

/** One state before and after: the drawing, and each joint's angle with its verdict. */
export const ForetoldFigures = ({ before, after, changed, document, view, settings }: ForetoldFiguresProps) => {
  const words = useWords(tryWords);
  return (
    <>
      {after.drivelines.map((driveline) => (
        <section key={driveline.drivelineId} className={own.foretold}>
          <h3>
            {after.drivelines.length > 1 ? `${view.names.driveline(driveline.drivelineId)}: ` : ""}
            {words.foretold}
          </h3>
          <BeforeAfter
            before={before?.drivelines.find(({ drivelineId }) => drivelineId === driveline.drivelineId) ?? null}
            after={driveline}
            changed={changed}
            document={document}
            view={view}
            settings={settings}
          />
        </section>
      ))}
    </>
  );
};

interface BeforeAfterProps extends Pick<ForetoldFiguresProps, "changed" | "document" | "view" | "settings"> {
  readonly before: PredictedDriveline | null;
  readonly after: PredictedDriveline;
}

const BeforeAfter = ({ before, after, changed, document, view, settings }: BeforeAfterProps) => {
  const words = useWords(tryWords);
  const { labels, numbers, correction } = view.catalogue;
  const index = document.drivelines.findIndex(({ id }) => id === after.drivelineId);
  const compared = useMemo(() => {
    const gauging = latestGaugings(document).find(({ driveline }) => driveline === index)?.gauging ?? null;
    const pictureOf = (analysis: PredictedDriveline) =>
      drivelinePictureOf({ case: document, driveline: index, gauging, analysis, language: settings.language });
    return [
      ...(before ? [{ name: words.standing, picture: pictureOf(before) }] : []),
      { name: changed ? words.withChange : words.standing, picture: pictureOf(after) },
    ];
  }, [before, after, changed, document, index, settings.language, words]);
  // The numbers go first; the drawing, which takes longer, follows as the device can.
  const drawn = useFollowed(compared);
  const draw = useCallback((options: FigureOptions) => comparisonView(drawn, options), [drawn]);
  const angles = after.joints.map(({ id, operatingAngle, verdict }) => ({
    name: id,
    was: before?.joints.find((joint) => joint.id === id)?.operatingAngle ?? null,
    is: operatingAngle,
    verdict,
  }));
  const rows = [
    ...angles,
    {
      name: labels.equivalentAngle,
      was: before?.cancellation.equivalentAngle ?? null,
      is: after.cancellation.equivalentAngle,
      verdict: after.cancellation.verdict,
    },
  ];
  const travel = after.slipTravel;
  return (
    <>
      <ul className={own.rows}>
        {rows.map(({ name, was, is, verdict }) => (
          <li key={name} className={own.row}>
            <span>{name}</span>
            <strong>
              {was ? correction.arrow(valueText(was, numbers, ""), valueText(is, numbers, "–")) : valueText(is, numbers, "–")}
            </strong>
            <VerdictMark tone={toneOf(verdict)}>{labels.verdicts[verdict]}</VerdictMark>
          </li>
        ))}
        <li className={own.row}>
          <span>{labels.motion}</span>
          <strong>{drivenText(before, after, view)}</strong>
          <VerdictMark tone={toneOf(after.motion.verdict)}>{labels.verdicts[after.motion.verdict]}</VerdictMark>
        </li>
        {travel ? (
          <li className={own.row}>
            <span>{correction.slipTravel}</span>
            <strong>{slipTravelText(fromSi(metres(travel.value), "mm"), view.catalogue)}</strong>
            <VerdictMark tone={toneOf(after.slipVerdict)}>{labels.verdicts[after.slipVerdict]}</VerdictMark>
          </li>
        ) : null}
      </ul>
      {after.geometry === "angles-only" ? <p className={styles.doubt}>{correction.anglesOnly}</p> : null}
      <Figure settings={settings} draw={draw} />
    </>
  );
};

/** The driven end's acceleration at the highest speed. */
function drivenText(
  before: PredictedDriveline | null,
  after: PredictedDriveline,
  { catalogue: { numbers, correction } }: CorrectionView,
): string {
  const text = (driveline: PredictedDriveline | null): string => {
    const driven = driveline?.motion.speeds.at(-1)?.drivenAcceleration;
    return driven ? numbers.acceleration(driven.value) : "–";
  };
  return before ? correction.arrow(text(before), text(after)) : text(after);
}
