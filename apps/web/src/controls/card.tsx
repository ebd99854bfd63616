import type { ReactNode } from "react";
import styles from "./card.module.css";

export interface CardProps {
  readonly title?: ReactNode;
  readonly aside?: ReactNode;
  readonly children: ReactNode;
}

/** One subject on the page. */
export const Card = ({ title, aside, children }: CardProps) => (
  <section className={styles.card}>
    {title === undefined ? null : (
      <header className={styles.head}>
        <h2>{title}</h2>
        {aside}
      </header>
    )}
    {children}
  </section>
);
