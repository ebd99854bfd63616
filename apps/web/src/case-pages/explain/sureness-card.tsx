import { Card } from "../../controls/card.js";
import { Meter } from "../../controls/meter.js";
import { useWords } from "../../words/use-words.js";
import type { Subject } from "../shared/subject.js";
import styles from "./explain-page.module.css";
import { explainWords } from "./explain-words.js";

/** Below this share, repeating one reading would not move the interval by an amount anybody could see. */
const STANDS_OUT = 0.15;
const SHOWN = 4;

/** Which reading to repeat first, and how much of the uncertainty each carries. Always of the measured driveline: nothing moved by hand is more or less sure. */
export const SurenessCard = ({ subject: { analysis, catalogue, nameOf } }: { readonly subject: Subject }) => {
  const words = useWords(explainWords);
  const { numbers, phrases, explanations, labels } = catalogue;
  const [first] = analysis.sensitivity;
  if (!first) return null;
  const nameIt = (of: string, path: string): string => {
    if (of === "zero") return words.zero;
    return of.startsWith("heading:") ? words.headingOf(nameOf(of.slice("heading:".length))) : nameOf(path);
  };
  return (
    <Card title={words.sure}>
      <p>
        <strong>{labels.repeatFirst}:</strong> {first.share >= STANDS_OUT ? phrases.repeat(first, nameOf) : explanations.nothingToRepeat}
      </p>
      <h3>{words.biggest}</h3>
      <ul className={styles.rows}>
        {analysis.sensitivity.slice(0, SHOWN).map(({ of, path, share }) => (
          <li key={`${path} ${of}`} className={styles.share}>
            <span>{nameIt(of, path)}</span>
            <Meter share={share} label={nameIt(of, path)} />
            <span>{numbers.share(share)}</span>
          </li>
        ))}
      </ul>
      <p className={styles.quiet}>{explanations.intervalsMean}</p>
    </Card>
  );
};
