import type { ReactNode } from "react";
import { ToggleButton } from "react-aria-components";
import { useLatest } from "../../../controls/use-latest.js";
import styles from "./ends-row.module.css";

export interface EndButton {
  readonly label: string;
  readonly isChosen: boolean;
  /** Chosen by somebody who looked, not taken over from another shaft. */
  readonly isSure?: boolean;
  readonly onPress: () => void;
}

export interface EndsRowProps {
  readonly label: string;
  readonly left: EndButton;
  readonly right: EndButton;
  /** Stands under both where pressing one keeps the reading as well. */
  readonly note: string | null;
  readonly children: ReactNode;
}

/** The two ends, each on the hand where one sees it, and the reading between them. */
export function EndsRow({ label, left, right, note, children }: EndsRowProps) {
  return (
    // biome-ignore lint/a11y/useSemanticElements: a fieldset would ask for a legend in sight, and there is no room for one
    <div className={styles.row} role="group" aria-label={label}>
      <End {...left} hand="left" note={note} />
      {children}
      <End {...right} hand="right" note={note} />
    </div>
  );
}

interface EndProps extends EndButton, Pick<EndsRowProps, "note"> {
  readonly hand: "left" | "right";
}

const End = ({ label, isChosen, isSure = true, onPress, hand, note }: EndProps) => {
  const press = useLatest(onPress);
  return (
    <ToggleButton className={`${styles.end} ${styles[hand]}`} isSelected={isChosen} data-sure={isSure} onPress={press} preventFocusOnPress>
      <span className={styles.arrow} aria-hidden="true">
        {hand === "left" ? "◣" : "◢"}
      </span>
      <span>{label}</span>
      {note === null ? null : <span className={styles.note}>{note}</span>}
    </ToggleButton>
  );
};
