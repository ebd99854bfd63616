import type { CaseDriveline, CaseGauging } from "@halfturn/casefile";
import { catalogueOf } from "@halfturn/words";
import { useState } from "react";
import { Button } from "../../../controls/button.js";
import { TextEntry } from "../../../controls/text-entry.js";
import { useLanguage, useWords } from "../../../words/use-words.js";
import { gaugeWords } from "../words/gauge-catalogue.js";
import { readingText } from "./reading-text.js";
import styles from "./taken-list.module.css";

export interface TakenListProps {
  readonly gauging: CaseGauging;
  readonly driveline: CaseDriveline;
  readonly taken: readonly number[];
  readonly slipped: readonly number[];
  readonly onChange: (index: number) => void;
  readonly onRemove: (index: number) => void;
  readonly onNote: (index: number, notes: string) => void;
}

/** What was read at this place: to take again, to delete, to write a note beside. */
export function TakenList({ gauging, driveline, taken, slipped, onChange, onRemove, onNote }: TakenListProps) {
  const words = useWords(gaugeWords);
  const { numbers } = catalogueOf(useLanguage());
  const [noting, setNoting] = useState<number | null>(null);
  if (taken.length === 0) return null;
  return (
    <section className={styles.taken} aria-label={words.taken}>
      <h3>{words.taken}</h3>
      <ul className={styles.list}>
        {taken.map((index) => {
          const reading = gauging.readings[index];
          if (!reading) return null;
          const text = readingText(reading, driveline.runs, words, numbers);
          return (
            <li key={index} className={styles.item} data-slipped={slipped.includes(index) || undefined}>
              <p className={styles.text}>
                {text}, {words.fromSide[reading.side]}
                {slipped.includes(index) ? <strong className={styles.slipped}> ▲ {words.slipped}</strong> : null}
              </p>
              <div className={styles.actions}>
                <Button kind="quiet" onPress={() => onChange(index)} label={`${words.change}: ${text}`}>
                  {words.change}
                </Button>
                <Button kind="quiet" onPress={() => setNoting(noting === index ? null : index)} label={`${words.note}: ${text}`}>
                  {words.note}
                </Button>
                <Button kind="quiet" onPress={() => onRemove(index)} label={`${words.remove}: ${text}`}>
                  {words.remove}
                </Button>
              </div>
              {noting === index ? (
                <TextEntry label={words.note} value={reading.notes ?? ""} onChange={(notes) => onNote(index, notes)} />
              ) : reading.notes === undefined ? null : (
                <p className={styles.notes}>{reading.notes}</p>
              )}
            </li>
          );
        })}
      </ul>
    </section>
  );
}
