import { limitRows } from "@halfturn/words";
import { Fold } from "../../controls/fold.js";
import { useWords } from "../../words/use-words.js";
import type { Subject } from "../shared/subject.js";
import styles from "./explain-page.module.css";
import { explainWords } from "./explain-words.js";

/** Every limit that a verdict here rests on, and where it comes from. */
export const LimitsFold = ({ subject: { input, catalogue } }: { readonly subject: Subject }) => {
  const words = useWords(explainWords);
  const kinds = [...new Set(input.driveline.joints.map(({ kind }) => kind))];
  const rows = limitRows(catalogue, input.limits, kinds);
  return (
    <Fold title={words.details}>
      <ul className={styles.rows}>
        {rows.map(({ name, value, source }) => (
          <li key={name} className={styles.limit}>
            <span>{name}</span>
            <strong>{value}</strong>
            <span className={styles.quiet}>{source}</span>
          </li>
        ))}
      </ul>
    </Fold>
  );
};
