import { catalogueOf, type Step } from "@halfturn/words";
import { Link } from "@tanstack/react-router";
import { useEffect, useRef } from "react";
import { useLanguage, useWords } from "../../words/use-words.js";
import { frameWords } from "./frame-words.js";
import styles from "./step-bar.module.css";
import type { ProgressState, StepProgress } from "./step-progress.js";

const SIGNS: Readonly<Record<ProgressState, string>> = { done: "✓", part: "◐", open: "○", trouble: "▲" };

export interface StepBarProps {
  readonly id: string;
  readonly current: Step;
  readonly steps: readonly { readonly step: Step; readonly progress: StepProgress }[];
}

/** Where the case stands, and the way to every step: a rail beside the page, or a strip for the thumb below it. */
export function StepBar({ id, current, steps }: StepBarProps) {
  const words = useWords(frameWords);
  const { labels } = catalogueOf(useLanguage());
  const here = useRef<HTMLLIElement>(null);
  useEffect(() => {
    if (current) here.current?.scrollIntoView({ inline: "center", block: "nearest" });
  }, [current]);
  return (
    <nav className={styles.bar} aria-label={words.steps}>
      <ol className={styles.steps}>
        {steps.map(({ step, progress }) => (
          <li key={step} ref={step === current ? here : null}>
            <Link
              to="/cases/$id/$step"
              params={{ id, step }}
              className={styles.step ?? ""}
              aria-current={step === current ? "step" : undefined}
              data-state={progress.state}
            >
              <span className={styles.sign} aria-hidden="true">
                {SIGNS[progress.state]}
              </span>
              <span className={styles.name}>{labels.steps[step]}</span>
              <span className={styles.note}>{words.note(progress.note)}</span>
            </Link>
          </li>
        ))}
      </ol>
    </nav>
  );
}
