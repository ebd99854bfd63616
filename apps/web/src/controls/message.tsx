import type { ReactNode } from "react";
import styles from "./message.module.css";

export interface MessageProps {
  readonly title: string;
  readonly children?: ReactNode;
  readonly action?: ReactNode;
}

/** What stands on a page that has nothing else to show. */
export const Message = ({ title, children, action }: MessageProps) => (
  <div className={styles.message} role="status">
    <p className={styles.title}>{title}</p>
    {children === undefined ? null : <p>{children}</p>}
    {action}
  </div>
);
