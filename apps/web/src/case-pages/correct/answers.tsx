import { type Change, limitParams, type PlanResult, type RankedChoice } from "@halfturn/engine/correction";
import { limitUseText } from "@halfturn/words";
import { Button } from "../../controls/button.js";
import { Card } from "../../controls/card.js";
import { Fold } from "../../controls/fold.js";
import { useWords } from "../../words/use-words.js";
import { degreesOf } from "../shared/estimate-text.js";
import { sentenceCase } from "../shared/sentence-case.js";
import { StepLink } from "../shared/step-link.js";
import { Chance } from "./chance.js";
import styles from "./correct-page.module.css";
import { correctWords } from "./correct-words.js";
import type { CorrectionView } from "./correction-view.js";

export interface AnswersProps {
  readonly result: PlanResult;
  readonly view: CorrectionView;
  readonly onTry: (changes: readonly Change[]) => void;
}

/** What everybody asks besides the best plan. */
export const Answers = ({ result, view, onTry }: AnswersProps) => {
  const words = useWords(correctWords);
  const { correction, numbers } = view.catalogue;
  const { doingNothing, bestSingleChange, bestWithoutAxle, optima, missing, notUsed, leftOut } = result;
  const { tightest } = doingNothing;
  return (
    <Card title={words.answers}>
      <div className={styles.answers}>
        <Answer question={words.single} choice={bestSingleChange} none={correction.noSingle} view={view} onTry={onTry} />
        <Answer question={words.withoutAxle} choice={bestWithoutAxle} none={correction.none} view={view} onTry={onTry} />
        <div className={styles.answer}>
          <h3>{words.nothing}</h3>
          {tightest ? <p>{correction.tightest(...limitUseText(limitParams(tightest), view.catalogue, view.names))}</p> : null}
          <Chance choice={doingNothing} view={view} />
        </div>
      </div>
      {optima.length === 0 ? null : (
        <Fold title={words.cutToMeasure}>
          <p className={styles.quiet}>{words.cutToMeasureHelp}</p>
          <ul className={styles.list}>
            {optima.map((optimum) => (
              <li key={optimum.adjusterId} className={styles.pairLine}>
                <span>{view.changes([optimum])[0]}</span>
                <strong>{Number.isFinite(optimum.margin) ? numbers.share(optimum.margin) : "–"}</strong>
              </li>
            ))}
          </ul>
        </Fold>
      )}
      <Fold title={correction.toMeasure} open={missing.length > 0}>
        {missing.length === 0 ? <p>{correction.nothingToMeasure}</p> : null}
        <ul className={styles.list}>
          {missing.map(({ of, path, effect }) => (
            <li key={`${path} ${of}`}>
              {effect === null
                ? correction.measureFirst(view.text.missing(of))
                : correction.measureGain(view.text.missing(of), numbers.angle(degreesOf(effect)))}
            </li>
          ))}
        </ul>
        {missing.length === 0 ? null : (
          <div>
            <StepLink id={view.document.id} step="describe" label={words.toDescribe} />
          </div>
        )}
      </Fold>
      {[
        { title: correction.notUsed, reasons: notUsed },
        { title: correction.leftOut, reasons: leftOut },
      ].map(({ title, reasons }) =>
        reasons.length === 0 ? null : (
          <Fold key={title} title={title}>
            <ul className={styles.list}>
              {[...new Set(reasons.map(view.text.reason))].map((text) => (
                <li key={text}>{text}</li>
              ))}
            </ul>
          </Fold>
        ),
      )}
      <p className={styles.quiet}>{correction.examined(numbers.plain(result.examined, 0))}</p>
    </Card>
  );
};

interface AnswerProps extends Pick<AnswersProps, "view" | "onTry"> {
  readonly question: string;
  readonly choice: RankedChoice | null;
  readonly none: string;
}

const Answer = ({ question, choice, none, view, onTry }: AnswerProps) => {
  const words = useWords(correctWords);
  return (
    <div className={styles.answer}>
      <h3>{question}</h3>
      {choice === null ? (
        <p>{sentenceCase(none)}.</p>
      ) : (
        <>
          <p>{view.catalogue.numbers.all(view.changes(choice.changes))}</p>
          <Chance choice={choice} view={view} />
          <Button
            onPress={() => onTry(choice.changes)}
            label={`${words.tryIt}: ${view.catalogue.numbers.all(view.changes(choice.changes))}`}
          >
            {words.tryIt}
          </Button>
        </>
      )}
    </div>
  );
};
