import type { Finding, FindingCode, Severity } from "@halfturn/engine/findings";
import { findingText } from "@halfturn/words";
import { useState } from "react";
import { Button } from "../../controls/button.js";
import { Card } from "../../controls/card.js";
import type { Tone } from "../../controls/verdict-mark.js";
import { VerdictMark } from "../../controls/verdict-mark.js";
import { useWords } from "../../words/use-words.js";
import type { Subject } from "../shared/subject.js";
import styles from "./explain-page.module.css";
import { explainWords } from "./explain-words.js";

const ORDER: readonly Severity[] = ["stop", "warn", "note"];
const TONES: Readonly<Record<Severity, Tone>> = { stop: "bad", warn: "doubt", note: "none" };

export interface FindingsCardProps {
  readonly subject: Subject;
  /** Puts on record that a person goes on in spite of a stop finding. */
  readonly onAccept: (code: FindingCode) => void;
}

/** What the readings gave cause to say, gravest first, each with its remedy. */
export const FindingsCard = ({ subject: { analysis, catalogue, nameOf }, onAccept }: FindingsCardProps) => {
  const findings = [...analysis.findings].sort((a, b) => ORDER.indexOf(a.severity) - ORDER.indexOf(b.severity));
  return (
    <Card title={catalogue.labels.findings}>
      {findings.length === 0 ? <p>{catalogue.labels.noFindings}</p> : null}
      <ul className={styles.findings}>
        {findings.map((finding) => (
          <FindingItem
            key={`${finding.code} ${finding.path}`}
            finding={finding}
            nameOf={nameOf}
            catalogue={catalogue}
            onAccept={onAccept}
          />
        ))}
      </ul>
    </Card>
  );
};

interface FindingItemProps extends Pick<Subject, "nameOf" | "catalogue">, Pick<FindingsCardProps, "onAccept"> {
  readonly finding: Finding;
}

const FindingItem = ({ finding, nameOf, catalogue, onAccept }: FindingItemProps) => {
  const words = useWords(explainWords);
  const [asking, setAsking] = useState(false);
  const { title, says, doNext } = findingText(catalogue, finding, nameOf);
  return (
    <li className={styles.finding}>
      <h3>{title}</h3>
      <VerdictMark tone={TONES[finding.severity]}>{catalogue.severities[finding.severity]}</VerdictMark>
      <p>{says}</p>
      <p>
        <strong>{words.remedy}:</strong> {doNext}
      </p>
      {finding.severity !== "stop" ? null : asking ? (
        <div className={styles.ask}>
          <p>{words.acceptHelp}</p>
          <div className={styles.buttons}>
            <Button kind="danger" onPress={() => onAccept(finding.code)}>
              {words.accept}
            </Button>
            <Button onPress={() => setAsking(false)}>{words.acceptCancel}</Button>
          </div>
        </div>
      ) : (
        <div className={styles.buttons}>
          <Button kind="quiet" onPress={() => setAsking(true)}>
            {words.accept} …
          </Button>
        </div>
      )}
    </li>
  );
};
