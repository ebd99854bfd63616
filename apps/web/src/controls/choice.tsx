import { type ReactNode, useState } from "react";
import { Label, Radio, RadioGroup } from "react-aria-components";
import styles from "./choice.module.css";
import { useLatest } from "./use-latest.js";

export interface Option<Value extends string> {
  readonly value: Value;
  readonly label: ReactNode;
}

export interface ChoiceProps<Value extends string> {
  readonly label: string;
  readonly options: readonly Option<Value>[];
  readonly value: Value | null;
  readonly onChange: (value: Value) => void;
  /** The label is read aloud but not drawn, where a heading says it already. */
  readonly hideLabel?: boolean;
}

const isSame = <Value extends string>(a: readonly Option<Value>[], b: readonly Option<Value>[]): boolean =>
  a.length === b.length && a.every(({ value, label }, k) => value === b[k]?.value && label === b[k]?.label);

/** The list that was there before, as long as it says the same: whoever makes it anew does not have the buttons drawn anew. */
function useSame<Value extends string>(options: readonly Option<Value>[]): readonly Option<Value>[] {
  const [kept, keep] = useState(options);
  if (isSame(kept, options)) return kept;
  keep(options);
  return options;
}

/** One of a few, all in sight: no list to open with a glove on. */
export const Choice = <Value extends string>({ label, options, value, onChange, hideLabel = false }: ChoiceProps<Value>) => {
  const shown = useSame(options);
  const choose = useLatest((chosen: string) => onChange(chosen as Value));
  return (
    <RadioGroup className={styles.choice ?? ""} value={value} onChange={choose} {...(hideLabel ? { "aria-label": label } : {})}>
      {hideLabel ? null : <Label className={styles.label ?? ""}>{label}</Label>}
      <div className={styles.options}>
        {shown.map((option) => (
          <Radio key={option.value} value={option.value} className={styles.option ?? ""}>
            {option.label}
          </Radio>
        ))}
      </div>
    </RadioGroup>
  );
};
