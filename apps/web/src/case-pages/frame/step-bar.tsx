import { catalogueOf, type Step } from "@halfturn/words";
import { Link, useRouter } from "@tanstack/react-router";
import { memo, useEffect, useRef } from "react";
import { useLanguage, useWords } from "../../words/use-words.js";
import { frameWords } from "./frame-words.js";
import styles from "./step-bar.module.css";
import type { ProgressState, StepProgress } from "./step-progress.js";

const SIGNS: Readonly<Record<ProgressState, string>> = { done: "✓", part: "◐", open: "○", trouble: "▲" };

/** Scrolls the strip until the entry is in its middle. Not `scrollIntoView`: from that the first Tab of the page would go on, past all that it is about. */
function centre(entry: HTMLElement): void {
  const list = entry.parentElement;
  if (!list) return;
  const [at, of] = [entry.getBoundingClientRect(), list.getBoundingClientRect()];
  list.scrollLeft += at.left + at.width / 2 - (of.left + of.width / 2);
}

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
  const router = useRouter();
  useEffect(() => {
    const centreHere = (): void => {
      if (current && here.current) centre(here.current);
    };
    centreHere();
    // The router puts every list back to where it was scrolled on the page before, this one too.
    return router.subscribe("onRendered", centreHere);
  }, [current, router]);
  return (
    <nav className={styles.bar} aria-label={words.steps}>
      <ol className={styles.steps}>
        {steps.map(({ step, progress: { state, note } }) => (
          <li key={step} ref={step === current ? here : null}>
            <StepEntry id={id} step={step} name={labels.steps[step]} state={state} note={words.note(note)} isHere={step === current} />
          </li>
        ))}
      </ol>
    </nav>
  );
}

interface StepEntryProps {
  readonly id: string;
  readonly step: Step;
  readonly name: string;
  readonly state: ProgressState;
  readonly note: string;
  readonly isHere: boolean;
}

/** Most edits of a case change what one step says, or none. */
const StepEntry = memo(({ id, step, name, state, note, isHere }: StepEntryProps) => (
  <Link
    to="/cases/$id/$step"
    params={{ id, step }}
    className={styles.step ?? ""}
    aria-current={isHere ? "step" : undefined}
    data-state={state}
  >
    <span className={styles.sign} aria-hidden="true">
      {SIGNS[state]}
    </span>
    <span className={styles.name}>{name}</span>
    <span className={styles.note}>{note}</span>
  </Link>
));
