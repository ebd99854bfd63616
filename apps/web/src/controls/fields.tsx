import type { ReactNode } from "react";
import styles from "./fields.module.css";

/** Fields side by side where there is room. */
export const Fields = ({ children }: { readonly children: ReactNode }) => <div className={styles.fields}>{children}</div>;
