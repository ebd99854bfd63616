import type { ReactNode } from "react";
import styles from "./verdict-mark.module.css";

export type Tone = "good" | "bad" | "low" | "doubt" | "none";

const SIGNS: Readonly<Record<Tone, string>> = { good: "✓", bad: "▲", low: "▼", doubt: "?", none: "–" };

/** A verdict in words, with a sign and a colour that say the same. */
export const VerdictMark = ({ tone, children }: { readonly tone: Tone; readonly children: ReactNode }) => (
  <span className={`${styles.mark} ${styles[tone]}`}>
    <span aria-hidden="true">{SIGNS[tone]}</span> {children}
  </span>
);
