import type { ReactNode } from "react";
import styles from "./page-frame.module.css";

export interface PageFrameProps {
  readonly title: string;
  /** Before the title: the way back. */
  readonly back?: ReactNode;
  readonly actions?: ReactNode;
  readonly children: ReactNode;
}

/** What stands around every page outside a case. */
export const PageFrame = ({ title, back, actions, children }: PageFrameProps) => (
  <div className={styles.frame}>
    <title>{`${title} – Halfturn`}</title>
    <header className={styles.head}>
      {back}
      <h1 className={styles.title}>{title}</h1>
      {actions}
    </header>
    <main className={styles.page}>
      <div className={styles.column}>{children}</div>
    </main>
  </div>
);
