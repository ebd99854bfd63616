import type { CaseDriveline, CaseGauging, VehicleSide } from "@halfturn/casefile";
import { catalogueOf, findingText, type NameOf } from "@halfturn/words";
import { Button } from "../../../controls/button.js";
import { useLanguage, useWords } from "../../../words/use-words.js";
import { endOnScreen, type ShaftEnd } from "../model/ends.js";
import type { Slip } from "../model/slips.js";
import { stepOfReading, stepsOf } from "../model/step.js";
import { gaugeWords } from "../words/gauge-catalogue.js";
import { endWords } from "./reading-text.js";
import styles from "./slip-alert.module.css";
import { stepLine } from "./step-text.js";

export interface SlipAlertProps {
  readonly slip: Slip;
  readonly gauging: CaseGauging;
  readonly driveline: CaseDriveline;
  readonly nameOf: NameOf;
  /** The side that one looks from: each answer stands on the hand where that end is seen. */
  readonly side: VehicleSide;
  readonly onReadAgain: (index: number) => void;
  /** Somebody looked again: this end of the shaft is the lower one. */
  readonly onLowerEnd: (shaft: string, end: ShaftEnd) => void;
  /** To the turn-round check, where that is what does not fit. */
  readonly onZero: () => void;
  /** One line is enough: it was seen, and something else is being done first. */
  readonly isFolded: boolean;
  readonly onFold: (isFolded: boolean) => void;
}

/** The buttons stay few enough to choose from with a glove on. */
const MOST_BUTTONS = 2;

/** What does not fit, said while the gauge is still in the hand, with the way to mend it. */
export function SlipAlert({ slip, gauging, driveline, nameOf, onReadAgain, side, onLowerEnd, onZero, isFolded, onFold }: SlipAlertProps) {
  const words = useWords(gaugeWords);
  const catalogue = catalogueOf(useLanguage());
  const { title, says, doNext } = findingText(catalogue, slip.finding, nameOf);
  const shaft = slip.lowerEndOf;
  const named = slip.readings.slice(0, MOST_BUTTONS).flatMap((index) => {
    const at = stepOfReading(driveline, gauging, index);
    const step = at && stepsOf(driveline, at.way, gauging)[at.step];
    const isFace = "face" in (gauging.readings[index] ?? {});
    return step ? [{ index, line: stepLine(step, isFace, driveline, nameOf, words) }] : [];
  });
  if (isFolded) {
    return (
      <section className={styles.folded} aria-label={title}>
        <p className={styles.title}>
          <span aria-hidden="true">▲ </span>
          {title}
        </p>
        <Button kind="quiet" onPress={() => onFold(false)}>
          {words.slip}
        </Button>
      </section>
    );
  }
  return (
    <section className={styles.slip} role="alert">
      <h2 className={styles.title}>
        <span aria-hidden="true">▲ </span>
        {title}
      </h2>
      <p className={styles.says}>{shaft === null ? says : `${says} ${words.whichLower(nameOf(shaft))}`}</p>
      <div className={styles.actions}>
        {shaft === null ? null : (
          <div className={styles.ends}>
            {(["left", "right"] as const).map((hand) => {
              const end = endOnScreen(driveline.runs, side, hand);
              return (
                <Button
                  key={hand}
                  kind="main"
                  onPress={() => onLowerEnd(shaft, end)}
                  label={`${nameOf(shaft)}: ${endWords(end, false, driveline.runs, words)}`}
                >
                  {endWords(end, false, driveline.runs, words)}
                </Button>
              );
            })}
          </div>
        )}
        {named.map(({ index, line }, k) => (
          <Button key={index} kind={k === 0 && shaft === null ? "main" : "plain"} onPress={() => onReadAgain(index)}>
            {words.readAgain(line)}
          </Button>
        ))}
        {slip.readings.length === 0 ? (
          <Button kind="main" onPress={onZero}>
            {words.setUp.zero}
          </Button>
        ) : null}
        <Button kind="quiet" onPress={() => onFold(true)}>
          {words.later}
        </Button>
      </div>
      <p>{doNext}</p>
    </section>
  );
}
