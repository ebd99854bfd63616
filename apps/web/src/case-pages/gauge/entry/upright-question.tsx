import { STEEPEST_DEG } from "@halfturn/casefile";
import { catalogueOf } from "@halfturn/words";
import { Button } from "../../../controls/button.js";
import { useLanguage, useWords } from "../../../words/use-words.js";
import { gaugeWords } from "../words/gauge-catalogue.js";
import styles from "./reading-entry.module.css";
import type { Entry } from "./use-entry.js";

export interface UprightQuestionProps {
  readonly deg: number;
  readonly plumbDeg: number;
  readonly isFace: boolean;
  readonly entry: Entry;
}

/** A number near upright is a face counted from level, not a shaft that stands on end: asked, never assumed. */
export function UprightQuestion({ deg, plumbDeg, isFace, entry }: UprightQuestionProps) {
  const words = useWords(gaugeWords);
  const { numbers } = catalogueOf(useLanguage());
  const shown = numbers.gaugedAngle(deg);
  return (
    <div className={styles.question} role="alert">
      <p>{isFace ? words.uprightOnFace(shown) : words.upright(shown)}</p>
      <Button kind="main" size="large" onPress={() => entry.keepUpright(plumbDeg, true)}>
        {words.asOffPlumb(numbers.gaugedAngle(plumbDeg))}
      </Button>
      {isFace || deg >= STEEPEST_DEG ? null : (
        <Button size="large" onPress={() => entry.keepUpright(deg, false)}>
          {words.asTyped(shown)}
        </Button>
      )}
      <Button kind="quiet" onPress={entry.typeAgain}>
        {words.cancel}
      </Button>
    </div>
  );
}
