import { FieldError, Input, Label, TextField } from "react-aria-components";
import entry from "../../controls/entry.module.css";
import { hasKeys, useKeptDraft } from "../../device/kept-draft.js";
import { useWords } from "../../words/use-words.js";
import styles from "./part.module.css";
import { describeWords } from "./words/describe-words.js";

export interface NameEntryProps {
  readonly part: string;
  readonly label: string;
  readonly value: string;
  /** Names of the others, of which this may be none. */
  readonly taken: readonly string[];
  readonly onChange: (name: string) => void;
}

interface Refused {
  readonly text: string;
  readonly of: string;
}

const isDraft = (value: unknown): value is Refused =>
  hasKeys(value, "text", "of") && typeof value.text === "string" && typeof value.of === "string";

/** A name that has to be there and be its own. While it is neither, what is typed stays in the field and the case keeps the name before. */
export function NameEntry({ part, label, value, taken, onChange }: NameEntryProps) {
  const words = useWords(describeWords);
  const [refused, refuse] = useKeptDraft(part, isDraft);
  // A name that came from elsewhere counts; two letters of a shorter one are nothing to ask about.
  const standing = refused?.of === value ? refused : null;
  const type = (text: string): void => {
    const isRefused = text.trim() === "" || taken.includes(text);
    refuse(isRefused ? { text, of: value } : null);
    if (!isRefused) onChange(text);
  };
  return (
    <TextField
      className={entry.entry ?? ""}
      value={standing?.text ?? value}
      onChange={type}
      isInvalid={standing !== null}
      validationBehavior="aria"
    >
      <Label className={entry.label ?? ""}>{label}</Label>
      <Input className={entry.box ?? ""} />
      <FieldError className={styles.fault ?? ""}>
        {standing === null ? "" : standing.text.trim() === "" ? words.nameMissing(value) : words.nameTaken(standing.text)}
      </FieldError>
    </TextField>
  );
}
