import type { CaseProgress } from "@halfturn/exchange";
import type { Language } from "@halfturn/words";
import { Link } from "@tanstack/react-router";
import { memo } from "react";
import { Button } from "../controls/button.js";
import { Icon } from "../controls/icon.js";
import { useLanguage, useWords } from "../words/use-words.js";
import styles from "./case-row-item.module.css";
import type { CaseRow } from "./case-rows.js";
import { casesWords } from "./cases-words.js";

const STEPS = ["gauged", "corrected", "proved"] as const satisfies readonly (keyof CaseProgress)[];

export interface CaseRowItemProps {
  readonly row: CaseRow;
  readonly onMore: (row: CaseRow) => void;
}

/** To make one takes longer than to use it a hundred times. */
const DAYS: Readonly<Record<Language, Intl.DateTimeFormat>> = {
  en: new Intl.DateTimeFormat("en", { dateStyle: "medium" }),
  es: new Intl.DateTimeFormat("es", { dateStyle: "medium" }),
};

/** One case of the list: what it is, how far it has come, and where it lies. */
export const CaseRowItem = memo(({ row, onMore }: CaseRowItemProps) => {
  const words = useWords(casesWords);
  const language = useLanguage();
  const { id, vehicle, progress, changedAt, here, waiting, conflicts } = row;
  const title = row.title || words.untitled;
  const day = new Date(changedAt);
  const done = STEPS.filter((step) => progress[step]).map((step) => words[step]);
  const open = STEPS.filter((step) => !progress[step]).map((step) => words[step]);
  const marks = [...(waiting ? [words.waiting] : []), ...(conflicts > 0 ? [words.toChoose] : [])];
  return (
    <>
      <Link to="/cases/$id/$step" params={{ id, step: "describe" }} className={styles.case ?? ""}>
        <strong className={styles.title}>{title}</strong>
        {vehicle === null ? null : <span className={styles.vehicle}>{vehicle}</span>}
        <span className={styles.facts}>
          {Number.isNaN(day.getTime()) ? null : <span>{DAYS[language].format(day)}</span>}
          {here ? null : <span>{words.onServer}</span>}
          {marks.map((mark) => (
            <span key={mark} className={styles.mark}>
              {mark}
            </span>
          ))}
        </span>
        <span className={styles.steps}>
          {done.length === 0 ? null : (
            <span className={styles.done} role="img" aria-label={done.join(", ")}>
              ✓ {done.join(", ")}
            </span>
          )}
          {open.length === 0 ? null : (
            // The empty ring says "not" to the eye.
            <span className={styles.open} role="img" aria-label={open.map((step) => `${words.not} ${step}`).join(", ")}>
              ○ {open.join(", ")}
            </span>
          )}
        </span>
      </Link>
      <Button kind="quiet" label={words.more(title)} onPress={() => onMore(row)}>
        <Icon name="more" />
      </Button>
    </>
  );
});
