import { type Case, latestGaugings } from "@halfturn/casefile";
import { catalogueOf } from "@halfturn/words";
import { Button } from "../../controls/button.js";
import { Choice } from "../../controls/choice.js";
import { useLanguage, useWords } from "../../words/use-words.js";
import { sentenceCase } from "../shared/sentence-case.js";
import { DrivelineChoice } from "./driveline-choice.js";
import styles from "./gauge-page.module.css";
import { gaugeWords } from "./words/gauge-catalogue.js";

export interface OtherGaugingsProps {
  readonly document: Case;
  readonly driveline: number;
  /** The gauging that is open. */
  readonly index: number;
  readonly onDriveline: (driveline: number) => void;
  /** null: a new one. */
  readonly onGauging: (index: number | null) => void;
}

/** The way to other drivelines, to earlier gaugings, and to a new one. */
export function OtherGaugings({ document, driveline, index, onDriveline, onGauging }: OtherGaugingsProps) {
  const words = useWords(gaugeWords).setUp;
  const catalogue = catalogueOf(useLanguage());
  const id = document.drivelines[driveline]?.id;
  const own = (document.gauging ?? []).flatMap((gauging, k) => (gauging.driveline === id ? [{ gauging, k }] : []));
  return (
    <section className={styles.others} aria-label={words.gaugings}>
      {latestGaugings(document)[driveline]?.gauging === index ? null : <p>{words.older}</p>}
      <DrivelineChoice document={document} label={words.driveline} driveline={driveline} onDriveline={onDriveline} />
      {own.length > 1 ? (
        <Choice
          label={words.gaugings}
          value={String(index)}
          options={own.map(({ gauging, k }) => ({
            value: String(k),
            label: sentenceCase(words.gaugingName(catalogue.labels.stages[gauging.stage], gauging.readings.length)),
          }))}
          onChange={(value) => onGauging(Number(value))}
        />
      ) : null}
      <Button onPress={() => onGauging(null)}>{words.newGauging}</Button>
    </section>
  );
}
