import type { ReactNode } from "react";
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

/** One of a few, all in sight: no list to open with a glove on. */
export const Choice = <Value extends string>({ label, options, value, onChange, hideLabel = false }: ChoiceProps<Value>) => {
  const choose = useLatest((chosen: string) => onChange(chosen as Value));
  return (
    <RadioGroup className={styles.choice ?? ""} value={value} onChange={choose} {...(hideLabel ? { "aria-label": label } : {})}>
      {hideLabel ? null : <Label className={styles.label ?? ""}>{label}</Label>}
      <div className={styles.options}>
        {options.map((option) => (
          <Radio key={option.value} value={option.value} className={styles.option ?? ""}>
            {option.label}
          </Radio>
        ))}
      </div>
    </RadioGroup>
  );
};
