import { Input, Label, Text, TextArea, TextField } from "react-aria-components";
import styles from "./entry.module.css";

export interface TextEntryProps {
  readonly label: string;
  readonly value: string;
  readonly onChange: (value: string) => void;
  readonly help?: string;
  /** Several lines. */
  readonly long?: boolean;
}

/** Words in a field. */
export const TextEntry = ({ label, value, onChange, help, long = false }: TextEntryProps) => (
  <TextField className={styles.entry ?? ""} value={value} onChange={onChange}>
    <Label className={styles.label ?? ""}>{label}</Label>
    {long ? <TextArea className={styles.box ?? ""} rows={3} /> : <Input className={styles.box ?? ""} />}
    {help === undefined ? null : (
      <Text slot="description" className={styles.help ?? ""}>
        {help}
      </Text>
    )}
  </TextField>
);
