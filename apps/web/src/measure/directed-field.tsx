import { Choice } from "../controls/choice.js";
import { hasKeys, useKeptDraft } from "../device/kept-draft.js";
import { useSettings } from "../settings/settings-context.js";
import { useWords } from "../words/use-words.js";
import { type Direction, directedAmount } from "./directed-amount.js";
import { LeftDraft } from "./left-draft.js";
import { MeasureField } from "./measure-field.js";
import styles from "./measure-field.module.css";
import { measureWords } from "./measure-words.js";
import { type Measure, shownAs } from "./measures.js";
import { type Bounds, measureText } from "./read-measure.js";

export interface DirectedFieldProps {
  readonly part: string;
  readonly label: string;
  readonly help?: string;
  readonly measure: Measure;
  /** Of the amount without its sign. */
  readonly bounds: Bounds;
  /** Signed, in the unit of the case file; null while there is none. */
  readonly value: number | null;
  /** What a positive and a negative value mean. */
  readonly words: { readonly plus: string; readonly minus: string };
  readonly onChange: (value: number | null) => void;
}

/** One half without the other: an amount that leads nowhere yet, or a direction without an amount. */
interface Half {
  readonly amount: number | null;
  readonly direction: Direction | null;
}

const isHalf = (value: unknown): value is Half =>
  hasKeys(value, "amount", "direction") &&
  (value.amount === null || typeof value.amount === "number") &&
  (value.direction === null || value.direction === "plus" || value.direction === "minus");

/** A number whose sign is chosen in words; it goes into the case once both are there. */
export function DirectedField({ part, label, help, measure, bounds, value, words: ways, onChange }: DirectedFieldProps) {
  const { settings } = useSettings();
  const words = useWords(measureWords);
  const [half, keepHalf] = useKeptDraft(part, isHalf);
  const amount = value === null ? (half?.amount ?? null) : Math.abs(value);
  const direction = value ? (value > 0 ? "plus" : "minus") : (half?.direction ?? null);
  // A value that came from elsewhere counts; the amount that was waiting for its direction stands beside it.
  const beside = value !== null && half !== null && half.amount !== amount ? half.amount : null;
  const put = (next: Half): void => {
    const signed = directedAmount(next.amount, next.direction);
    // Nought has no direction: the one that was chosen is kept beside it.
    keepHalf(signed ? null : next);
    if (signed !== value) onChange(signed);
  };
  return (
    <div className={styles.directed}>
      <MeasureField
        part={`${part}.amount`}
        label={label}
        measure={measure}
        bounds={bounds}
        value={amount}
        onChange={(next) => put({ amount: next, direction })}
        {...(help === undefined ? {} : { help })}
      />
      <Choice
        label={`${label}: ${words.whichWay}`}
        hideLabel
        options={[
          { value: "plus", label: ways.plus },
          { value: "minus", label: ways.minus },
        ]}
        value={direction}
        onChange={(next) => put({ amount, direction: next })}
      />
      {value === null && amount !== null ? (
        <p className={styles.together} role="status">
          {words.chooseWay}
        </p>
      ) : null}
      {beside === null ? null : (
        <LeftDraft
          text={`${measureText(beside, measure, settings.units, words.decimalSign)} ${shownAs(measure, settings.units).chip}`.trim()}
          onUse={() => put({ amount: beside, direction: half?.direction ?? direction })}
          onForget={() => keepHalf(null)}
        />
      )}
    </div>
  );
}
