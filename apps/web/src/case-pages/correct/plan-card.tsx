import { type Change, limitParams, type Plan } from "@halfturn/engine/correction";
import { limitUseText } from "@halfturn/words";
import { Button } from "../../controls/button.js";
import { Fold } from "../../controls/fold.js";
import { useWords } from "../../words/use-words.js";
import { sentenceCase } from "../shared/sentence-case.js";
import { Chance } from "./chance.js";
import styles from "./correct-page.module.css";
import { correctWords } from "./correct-words.js";
import type { CorrectionView } from "./correction-view.js";
import { StatesList } from "./states-list.js";
import { StepsList } from "./steps-list.js";

/** What is likelier to fail than to hold is not what to do next. */
const LIKELY = 0.5;

export interface PlanCardProps {
  readonly number: number;
  readonly plan: Plan;
  readonly view: CorrectionView;
  /** Whether it is of the case as it stands. */
  readonly fresh: boolean;
  readonly onChoose: (plan: Plan) => void;
  readonly onTry: (changes: readonly Change[]) => void;
}

/** One plan: what is changed, how sure, what it costs, what it does, and the work. */
export const PlanCard = ({ number, plan, view, fresh, onChoose, onTry }: PlanCardProps) => {
  const words = useWords(correctWords);
  const { correction, numbers } = view.catalogue;
  const changes = view.changes(plan.changes);
  return (
    <article className={styles.plan} aria-label={correction.planNumber(number)}>
      <div className={styles.planHead}>
        <div>
          <h3>{correction.planNumber(number)}</h3>
          <ul className={styles.changes}>
            {changes.length === 0 ? <li>{sentenceCase(correction.nothing)}</li> : changes.map((change) => <li key={change}>{change}</li>)}
          </ul>
          {changes.length === 0 ? null : <p className={styles.quiet}>{correction.labour(numbers.plain(plan.labour, 1))}</p>}
        </div>
        <Chance choice={plan} view={view} />
      </div>
      <Fold title={words.whatItDoes}>
        <StatesList states={plan.states} view={view} />
        {plan.tightest ? <p>{correction.tightest(...limitUseText(limitParams(plan.tightest), view.catalogue, view.names))}</p> : null}
      </Fold>
      {changes.length === 0 ? null : (
        <Fold title={words.steps}>
          <StepsList steps={plan.instructions} view={view} />
        </Fold>
      )}
      {plan.changes.length === 0 ? null : (
        <div className={styles.buttons}>
          <Button
            kind={number === 1 && plan.probabilityOfLimits >= LIKELY ? "main" : "plain"}
            isDisabled={!fresh}
            onPress={() => onChoose(plan)}
          >
            {words.choose}
          </Button>
          <Button onPress={() => onTry(plan.changes)}>{words.tryIt}</Button>
        </div>
      )}
    </article>
  );
};
