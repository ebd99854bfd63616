import type { CaseCorrection } from "@halfturn/casefile";
import { Button } from "../../controls/button.js";
import { Card } from "../../controls/card.js";
import { Fold } from "../../controls/fold.js";
import { VerdictMark } from "../../controls/verdict-mark.js";
import { useLanguage, useWords } from "../../words/use-words.js";
import { dayText } from "../shared/day-text.js";
import { StepLink } from "../shared/step-link.js";
import styles from "./correct-page.module.css";
import { correctWords } from "./correct-words.js";
import type { CorrectionView } from "./correction-view.js";
import { gaugedSince } from "./plan-ground.js";
import { StepsList } from "./steps-list.js";

export interface ChosenCardProps {
  readonly correction: CaseCorrection;
  readonly view: CorrectionView;
  readonly onMade: () => void;
  readonly onNotMade: () => void;
  readonly onDrop: () => void;
}

/** The correction on record: the work, and whether it is made. */
export const ChosenCard = ({ correction, view, onMade, onNotMade, onDrop }: ChosenCardProps) => {
  const words = useWords(correctWords);
  const language = useLanguage();
  const made = correction.state === "made";
  const proved = gaugedSince(view.document, correction);
  const changes = correction.changes.map((change) =>
    view.text.change(change, view.document.adjusters?.find(({ id }) => id === change.adjuster)?.kind),
  );
  return (
    <Card
      title={words.chosenTitle}
      aside={
        <VerdictMark tone={made ? "good" : "low"}>
          {made
            ? words.madeAt(dayText(correction.madeAt ?? correction.chosenAt, language))
            : words.chosenAt(dayText(correction.chosenAt, language))}
        </VerdictMark>
      }
    >
      <ul className={styles.changes}>
        {changes.map((change) => (
          <li key={change}>{change}</li>
        ))}
      </ul>
      <Fold key={correction.state} title={words.steps} open={!made}>
        <StepsList steps={correction.instructions ?? []} view={view} />
      </Fold>
      {made ? <p>{proved ? words.proved : words.proveNext}</p> : null}
      <div className={styles.buttons}>
        {made ? (
          <>
            <StepLink
              id={view.document.id}
              step={proved ? "prove" : "gauge"}
              label={proved ? words.toProve : words.toGauge}
              kind={proved ? "plain" : "main"}
            />
            {proved ? null : (
              <Button kind="quiet" onPress={onNotMade}>
                {words.notMade}
              </Button>
            )}
          </>
        ) : (
          <>
            <Button kind="main" onPress={onMade}>
              {words.markMade}
            </Button>
            <Button kind="quiet" onPress={onDrop}>
              {words.drop}
            </Button>
          </>
        )}
      </div>
    </Card>
  );
};
