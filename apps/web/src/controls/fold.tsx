import type { ReactNode } from "react";
import styles from "./fold.module.css";

export interface FoldProps {
  readonly title: ReactNode;
  readonly children: ReactNode;
  readonly open?: boolean;
}

/** What not everybody needs at once: one line until it is opened. Opened on paper, where nobody can press it. */
export const Fold = ({ title, children, open = false }: FoldProps) => (
  <details className={styles.fold} open={open}>
    <summary className={styles.summary}>{title}</summary>
    <div className={styles.body}>{children}</div>
  </details>
);
