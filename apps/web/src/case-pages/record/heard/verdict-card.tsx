import { capital, catalogueOf, type NameOf, noteText, probabilityText } from "@halfturn/words";
import { Button } from "../../../controls/button.js";
import { Card } from "../../../controls/card.js";
import { VerdictMark } from "../../../controls/verdict-mark.js";
import type { Settings } from "../../../device/settings.js";
import { useWords } from "../../../words/use-words.js";
import type { Heard } from "../../../worker/listening/listening-types.js";
import styles from "../record-page.module.css";
import type { SpeedForm } from "../set-up/speed-form.js";
import { recordWords } from "../words/record-catalogue.js";
import { verdictText } from "./verdict-text.js";

/** m/s to km/h. */
const TO_KMH = 3.6;
/** Half of the last digit that is shown. */
const LEAST_CORRECTION = 0.0005;

export interface VerdictCardProps {
  readonly heard: Heard;
  readonly nameOf: NameOf;
  readonly settings: Settings;
  readonly form: SpeedForm;
  readonly onKeep: (heard: Heard) => void;
  readonly isKept: boolean;
}

/** The part that is named, or why none is; what that rests on; and the way into the case. */
export function VerdictCard({ heard, nameOf, settings, form, onKeep, isKept }: VerdictCardProps) {
  const words = useWords(recordWords).heard;
  const catalogue = catalogueOf(settings.language, settings.units);
  const { orders, numbers, terminal, vibration } = catalogue;
  const { listening } = terminal;
  const { json, parts, wheelRate, circumference, notes } = heard;
  const sentence = verdictText(json, parts, nameOf, catalogue);
  const roadSpeed = (turns: number): string => numbers.roadSpeed(turns * circumference * TO_KMH, 0);
  const corrected = json.speedCorrection ?? 0;
  const percent = `${corrected < 0 ? "-" : "+"}${numbers.plain(Math.abs(corrected) * 100, 1)}\u00a0%`;
  const { verdict } = json;
  return (
    <Card
      title={verdict ? capital(orders.orderOf(verdict.part, verdict.order, nameOf)) : listening.noVerdict}
      aside={
        <VerdictMark tone={verdict ? "good" : "doubt"}>
          {verdict ? words.probable(probabilityText(verdict.probability, numbers)) : listening.noVerdict}
        </VerdictMark>
      }
    >
      <p role="status">{sentence}</p>
      <div className={styles.stack}>
        <p className={styles.quiet}>
          {vibration.heading(`${numbers.plain(json.durationS, 1)}\u00a0s`, numbers.plain(json.sampleRateHz, 0))}.{" "}
          {listening.turned(numbers.plain(json.wheelTurns, 0), numbers.plain(json.bandHz, 0))}{" "}
          {words.speeds(roadSpeed(wheelRate[0]), roadSpeed(wheelRate[2]))}
          {Math.abs(corrected) < LEAST_CORRECTION ? "" : ` ${listening.speedCorrected(percent)}`}
        </p>
        {form.from === "constant" ? <p className={styles.quiet}>{words.typedSpeed}</p> : null}
        {notes.map((note) => (
          <p key={note.code} className={styles.quiet}>
            {noteText(orders, note, numbers)}
          </p>
        ))}
      </div>
      <div className={styles.buttons}>
        <Button kind="main" onPress={() => onKeep(heard)}>
          {words.keep}
        </Button>
        {isKept ? <span role="status">✓ {words.keptNow}</span> : null}
      </div>
    </Card>
  );
}
