import styles from "./icon.module.css";

/** Lines on a field of 24 by 24, in the colour of the text around them. */
const LINES = {
  back: "M15 5l-7 7 7 7",
  undo: "M9 7L4 12l5 5M4.5 12H14a4 4 0 0 1 0 8h-2",
  redo: "M15 7l5 5-5 5M19.5 12H10a4 4 0 0 0 0 8h2",
  settings: "M4 7h9m5 0h2M4 17h2m5 0h9M15.5 4.5v5M8.5 14.5v5",
  add: "M12 5v14M5 12h14",
  search: "M10.5 4a6.5 6.5 0 1 1 0 13a6.5 6.5 0 0 1 0-13M15.5 15.5L20 20",
  close: "M6 6l12 12M18 6L6 18",
  file: "M6 3h8l4 4v14H6zM14 3v4h4M9 12h6M9 16h6",
  away: "M4 5h16v4H4zM6 9v10h12V9M10 13h4",
  warn: "M12 4L21 20H3zM12 10v5M12 17.5v.5",
  forward: "M9 5l7 7-7 7",
  more: "M12 5.5v.01M12 12v.01M12 18.5v.01",
} as const;

export type IconName = keyof typeof LINES;

/** Beside a word, or in a button that has a label of its own. */
export const Icon = ({ name }: { readonly name: IconName }) => (
  <svg className={styles.icon} viewBox="0 0 24 24" aria-hidden="true">
    <path d={LINES[name]} />
  </svg>
);
