import { Button } from "../controls/button.js";
import { useWords } from "../words/use-words.js";
import styles from "./measure-field.module.css";
import { measureWords } from "./measure-words.js";

export interface LeftDraftProps {
  /** As it was typed. */
  readonly text: string;
  readonly onUse: () => void;
  readonly onForget: () => void;
}

/** A text that was never kept, under the value that came into the case meanwhile: the value counts, and both are in sight until somebody chose. */
export function LeftDraft({ text, onUse, onForget }: LeftDraftProps) {
  const words = useWords(measureWords);
  return (
    <div className={styles.left} role="status">
      <span>{words.leftHere(text)}</span>
      <Button kind="quiet" onPress={onUse}>
        {words.useLeft}
      </Button>
      <Button kind="quiet" onPress={onForget}>
        {words.forgetLeft}
      </Button>
    </div>
  );
}
