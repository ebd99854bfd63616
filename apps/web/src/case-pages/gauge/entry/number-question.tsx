import { catalogueOf } from "@halfturn/words";
import { Button } from "../../../controls/button.js";
import { useLanguage, useWords } from "../../../words/use-words.js";
import { type Doubt, offPlumb, withSignPut } from "../model/entry-text.js";
import { gaugeWords } from "../words/gauge-catalogue.js";
import styles from "./reading-entry.module.css";
import type { Entry } from "./use-entry.js";

export interface NumberQuestionProps {
  readonly doubt: Doubt;
  readonly deg: number;
  readonly isFace: boolean;
  readonly entry: Entry;
}

/** A number near upright is a face counted from level, one that is steep lacks its decimal sign: asked, never assumed. */
export function NumberQuestion({ doubt, deg, isFace, entry }: NumberQuestionProps) {
  const words = useWords(gaugeWords);
  const { numbers } = catalogueOf(useLanguage());
  const shown = numbers.gaugedAngle(deg);
  const meant = doubt === "upright" ? offPlumb(deg) : withSignPut(deg);
  const asks = doubt === "steep" ? words.steep(shown) : isFace ? words.uprightOnFace(shown) : words.upright(shown);
  // A face counted from level is never kept as it was typed, nor is a shaft that stands on end.
  const mayStand = doubt === "steep" || (!isFace && deg < 90);
  return (
    <div className={styles.question} role="alert">
      <p>{asks}</p>
      {meant === null ? null : (
        <Button kind="main" size="large" onPress={() => entry.answer(meant, isFace || doubt === "upright")}>
          {doubt === "upright" ? words.asOffPlumb(numbers.gaugedAngle(meant)) : words.itShows(numbers.gaugedAngle(meant))}
        </Button>
      )}
      {mayStand ? (
        <Button size="large" onPress={() => entry.answer(deg, isFace)}>
          {doubt === "upright" ? words.asTyped(shown) : words.itShows(shown)}
        </Button>
      ) : null}
      <Button kind="quiet" onPress={entry.typeAgain}>
        {words.cancel}
      </Button>
    </div>
  );
}
