import type { Change, Plan } from "@halfturn/engine/correction";
import { Button } from "../../controls/button.js";
import { Card } from "../../controls/card.js";
import { Choice } from "../../controls/choice.js";
import { useWords } from "../../words/use-words.js";
import { Blocks } from "./blocks.js";
import styles from "./correct-page.module.css";
import { correctWords } from "./correct-words.js";
import type { CorrectionView } from "./correction-view.js";
import { PlanCard } from "./plan-card.js";
import { TaughtNote } from "./taught-note.js";
import type { PlanSearch, PlanWish } from "./use-plan.js";

export interface PlansCardProps {
  readonly search: PlanSearch;
  readonly wish: PlanWish;
  readonly onWish: (wish: PlanWish) => void;
  readonly view: CorrectionView;
  readonly onChoose: (plan: Plan) => void;
  readonly onTry: (changes: readonly Change[]) => void;
}

/** The best plan more likely to fail than to hold is said to be so, and the others are no better. */
const UNLIKELY = 0.5;

/** The search and what it found, best first. */
export const PlansCard = ({ search, wish, onWish, view, onChoose, onTry }: PlansCardProps) => {
  const words = useWords(correctWords);
  const { answer, fresh } = search;
  return (
    <Card title={words.best}>
      <div className={styles.wishes}>
        <Choice
          label={words.atOnce}
          value={String(wish.maxChanges)}
          onChange={(count) => onWish({ ...wish, maxChanges: Number(count) })}
          options={[1, 2, 3].map((count) => ({ value: String(count), label: words.changesAtOnce(count) }))}
        />
        <Choice
          label={words.mayMove}
          value={wish.leaveAxle ? "not-axle" : "all"}
          onChange={(what) => onWish({ ...wish, leaveAxle: what === "not-axle" })}
          options={[
            { value: "all", label: words.everything },
            { value: "not-axle", label: words.notAxle },
          ]}
        />
      </div>
      <Progress search={search} view={view} />
      {answer && !fresh ? <p className={styles.quiet}>{words.older}</p> : null}
      {answer && !answer.ok ? (
        <div className={styles.notice}>
          <h3>{words.refused}</h3>
          <p>{words.refusedHelp}</p>
          <ul>
            {[...new Set(answer.reasons.map(view.text.reason))].map((text) => (
              <li key={text}>{text}</li>
            ))}
          </ul>
        </div>
      ) : null}
      {answer?.ok ? (
        <>
          <TaughtNote document={view.document} view={view} />
          <Blocks result={answer.value} view={view} />
          {(answer.value.plans[0]?.probabilityOfLimits ?? 1) < UNLIKELY ? (
            <p className={styles.doubt}>{view.catalogue.correction.unlikely}</p>
          ) : null}
          {answer.value.plans.map((plan, k) => (
            <PlanCard
              key={JSON.stringify(plan.changes)}
              number={k + 1}
              plan={plan}
              view={view}
              fresh={fresh}
              onChoose={onChoose}
              onTry={onTry}
            />
          ))}
        </>
      ) : null}
    </Card>
  );
};

const Progress = ({ search, view }: Pick<PlansCardProps, "search" | "view">) => {
  const words = useWords(correctWords);
  const { state, share, stop, again } = search;
  if (state === "done") return null;
  if (state === "working") {
    return (
      <div className={styles.progress}>
        <progress className={styles.bar} max={1} value={share} aria-label={words.searching} />
        <span>
          {words.searching}: {view.catalogue.numbers.share(share)}
        </span>
        <Button onPress={stop}>{words.stop}</Button>
      </div>
    );
  }
  return (
    <div className={styles.progress} role="status">
      <span>{state === "stopped" ? words.stopped : words.failed}</span>
      <Button onPress={again}>{words.again}</Button>
    </div>
  );
};
