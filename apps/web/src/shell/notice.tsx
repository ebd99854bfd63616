import type { ReactNode } from "react";
import styles from "./notice.module.css";

export interface NoticeProps {
  readonly tone: "news" | "doubt";
  readonly children: ReactNode;
  readonly action?: ReactNode;
}

/** A line above the page that is there as long as it is true. */
export const Notice = ({ tone, children, action }: NoticeProps) => (
  <div className={`${styles.notice} ${styles[tone]}`} role="status">
    <p>{children}</p>
    {action}
  </div>
);
