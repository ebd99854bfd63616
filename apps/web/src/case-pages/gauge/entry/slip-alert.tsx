import type { CaseDriveline, CaseGauging } from "@halfturn/casefile";
import { catalogueOf, findingText, type NameOf } from "@halfturn/words";
import { useEffect, useRef } from "react";
import { Button } from "../../../controls/button.js";
import { useLanguage, useWords } from "../../../words/use-words.js";
import { notedEnd, otherEnd } from "../model/ends.js";
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
  readonly onReadAgain: (index: number) => void;
  readonly onTurn: (index: number) => void;
  /** To the turn-round check, where that is what does not fit. */
  readonly onZero: () => void;
  readonly onLeave: () => void;
  /** One line is enough: it was seen, and something else is being done first. */
  readonly isFolded: boolean;
  readonly onFold: (isFolded: boolean) => void;
}

/** The buttons stay few enough to choose from with a glove on. */
const MOST_BUTTONS = 2;

/** What does not fit, said while the gauge is still in the hand, with the way to mend it. */
export function SlipAlert({ slip, gauging, driveline, nameOf, onReadAgain, onTurn, onZero, onLeave, isFolded, onFold }: SlipAlertProps) {
  const words = useWords(gaugeWords);
  const catalogue = catalogueOf(useLanguage());
  const place = useRef<HTMLElement>(null);
  // biome-ignore lint/correctness/useExhaustiveDependencies: a new slip comes into sight, and only that
  useEffect(() => {
    place.current?.scrollIntoView({ block: "nearest" });
  }, [slip.key]);
  const { title, says, doNext } = findingText(catalogue, slip.finding, nameOf);
  const turned = slip.turn === null ? undefined : gauging.readings[slip.turn];
  const noted = turned && notedEnd(turned);
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
    <section className={styles.slip} role="alert" ref={place}>
      <h3 className={styles.title}>
        <span aria-hidden="true">▲ </span>
        {title}
      </h3>
      <p className={styles.says}>{says}</p>
      <div className={styles.actions}>
        {turned && noted ? (
          <Button kind="main" onPress={() => onTurn(slip.turn as number)}>
            {words.itIs(endWords(otherEnd(noted), "face" in turned, driveline.runs, words))}
          </Button>
        ) : null}
        {named.map(({ index, line }, k) => (
          <Button key={index} kind={k === 0 && !turned ? "main" : "plain"} onPress={() => onReadAgain(index)}>
            {words.readAgain(line)}
          </Button>
        ))}
        {slip.readings.length === 0 ? (
          <Button kind="main" onPress={onZero}>
            {words.setUp.zero}
          </Button>
        ) : null}
        {slip.canStand ? (
          <Button kind="quiet" onPress={onLeave}>
            {words.rightAsNoted}
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
