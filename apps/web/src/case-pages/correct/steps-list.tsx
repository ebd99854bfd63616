import type { InstructionCode } from "@halfturn/engine/correction";
import type { FindingParams } from "@halfturn/engine/findings";
import type { CautionId } from "@halfturn/words";
import styles from "./correct-page.module.css";
import type { CorrectionView } from "./correction-view.js";

/** A step as the engine gives it or as the case has it on record; a later version may have recorded a code that is not known here. */
export interface Step {
  readonly code: string;
  readonly params: Readonly<Record<string, unknown>>;
  readonly cautions?: readonly string[];
}

/** The work in its order, each caution beside the first step that needs it and pointed to afterwards. */
export const StepsList = ({ steps, view }: { readonly steps: readonly Step[]; readonly view: CorrectionView }) => {
  const { cautions, correction } = view.catalogue;
  const known = steps.filter(({ code }) => Object.hasOwn(correction.instructions, code));
  const cautionsOf = ({ cautions: codes = [] }: Step) => codes.filter((code): code is CautionId => Object.hasOwn(cautions.texts, code));
  const firstAt = (caution: CautionId): number => known.findIndex((step) => cautionsOf(step).includes(caution));
  return (
    <>
      <ol className={styles.steps}>
        {known.map((step, k) => (
          <li key={`${step.code} ${JSON.stringify(step.params)}`} className={styles.step}>
            <p>{view.text.instruction({ code: step.code as InstructionCode, params: step.params as FindingParams })}</p>
            {cautionsOf(step).map((caution) => (
              <p key={caution} className={styles.caution}>
                <span aria-hidden="true">⚠ </span>
                {firstAt(caution) === k
                  ? correction.caution(cautions.texts[caution])
                  : correction.cautionAsAt(view.catalogue.numbers.plain(firstAt(caution) + 1, 0))}
              </p>
            ))}
          </li>
        ))}
      </ol>
      <p className={styles.quiet}>{cautions.defersTo}</p>
    </>
  );
};
