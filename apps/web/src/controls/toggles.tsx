import { Checkbox, CheckboxGroup, Label } from "react-aria-components";
import type { Option } from "./choice.js";
import styles from "./choice.module.css";

export interface TogglesProps<Value extends string> {
  readonly label: string;
  readonly options: readonly Option<Value>[];
  readonly values: readonly string[];
  readonly onChange: (values: readonly string[]) => void;
}

/** Any of a few, all in sight. */
export const Toggles = <Value extends string>({ label, options, values, onChange }: TogglesProps<Value>) => (
  <CheckboxGroup className={styles.choice ?? ""} value={[...values]} onChange={onChange}>
    <Label className={styles.label ?? ""}>{label}</Label>
    <div className={styles.options}>
      {options.map((option) => (
        <Checkbox key={option.value} value={option.value} className={styles.option ?? ""}>
          {({ isSelected }) => (
            <>
              {isSelected ? <span aria-hidden="true">✓</span> : null}
              {option.label}
            </>
          )}
        </Checkbox>
      ))}
    </div>
  </CheckboxGroup>
);
