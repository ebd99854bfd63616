import { SearchField as Field, Input } from "react-aria-components";
import entry from "../controls/entry.module.css";
import { Icon } from "../controls/icon.js";
import styles from "./search-field.module.css";

export interface SearchFieldProps {
  readonly label: string;
  readonly value: string;
  readonly onChange: (value: string) => void;
}

/** Words to look for; Escape empties it. */
export const SearchField = ({ label, value, onChange }: SearchFieldProps) => (
  <Field className={styles.search ?? ""} aria-label={label} value={value} onChange={onChange}>
    <Icon name="search" />
    <Input className={`${entry.box} ${styles.box}`} placeholder={label} />
  </Field>
);
