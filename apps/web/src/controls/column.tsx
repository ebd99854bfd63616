import type { ReactNode } from "react";
import styles from "./column.module.css";

/** Subjects below one another; a wide figure scrolls inside its own instead of widening the page. */
export const Column = ({ children }: { readonly children: ReactNode }) => <div className={styles.column}>{children}</div>;
