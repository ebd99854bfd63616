import type { Finding } from "@halfturn/engine/findings";
import { catalogueOf, findingText, type NameOf } from "@halfturn/words";
import { Button } from "../../../controls/button.js";
import { useLanguage, useWords } from "../../../words/use-words.js";
import { gaugeWords } from "../words/gauge-catalogue.js";
import styles from "./all-read.module.css";

export interface AllReadProps {
  readonly advice: readonly Finding[];
  readonly nameOf: NameOf;
  /** To a step by its key. */
  readonly onRead: (key: string) => void;
  readonly onTape: () => void;
  readonly onZero: () => void;
}

/** Past the last place: it is enough, and what would make it surer. */
export function AllRead({ advice, nameOf, onRead, onTape, onZero }: AllReadProps) {
  const words = useWords(gaugeWords);
  const catalogue = catalogueOf(useLanguage());
  return (
    <section className={styles.done}>
      <h2 className={styles.title}>
        <span aria-hidden="true">✓ </span>
        {words.allRead}
      </h2>
      {advice.length === 0 ? null : (
        <>
          <p className={styles.help}>{words.allReadHelp}</p>
          <ul className={styles.list}>
            {advice.map((finding) => {
              const { title, says, doNext } = findingText(catalogue, finding, nameOf);
              const { shaft } = finding.params;
              // Two shafts may want the same: each says which it is.
              const of = typeof shaft === "string" ? nameOf(shaft) : null;
              return (
                <li key={`${finding.code} ${finding.path}`} className={styles.item}>
                  <h3>{of === null ? title : `${title}: ${of}`}</h3>
                  <p>{says}</p>
                  <p>{doNext}</p>
                  {finding.code === "gauging.heading-not-measured" ? <Button onPress={onTape}>{words.ways.tape}</Button> : null}
                  {of !== null && finding.code === "gauging.no-check-reading" && finding.params.extra !== "turn-round" ? (
                    <Button onPress={() => onRead(String(finding.params.extra))}>{words.readAgain(of)}</Button>
                  ) : null}
                  {finding.code === "gauging.zero-not-checked" ? <Button onPress={onZero}>{words.setUp.zeroStart}</Button> : null}
                </li>
              );
            })}
          </ul>
        </>
      )}
    </section>
  );
}
