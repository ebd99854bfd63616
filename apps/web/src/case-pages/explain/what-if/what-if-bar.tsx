import { Button } from "../../../controls/button.js";
import { useWords } from "../../../words/use-words.js";
import styles from "./what-if-bar.module.css";
import { whatIfWords } from "./what-if-words.js";

/** Stays in sight while the page shows what was never measured. The last thing on the page, so that nothing jumps under the finger when it appears. */
export const WhatIfBar = ({ onBack }: { readonly onBack: () => void }) => {
  const words = useWords(whatIfWords);
  return (
    <div className={styles.bar} role="status">
      <p className={styles.said}>
        <strong>{words.title}</strong> {words.notMeasured}
      </p>
      <Button kind="main" onPress={onBack}>
        {words.back}
      </Button>
    </div>
  );
};
