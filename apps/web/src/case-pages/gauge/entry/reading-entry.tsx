import type { CaseDriveline } from "@halfturn/casefile";
import { catalogueOf, type NameOf, type Numbers } from "@halfturn/words";
import { type ReactNode, useId } from "react";
import { NumberPad } from "../../../controls/number-pad.js";
import { useLanguage, useWords } from "../../../words/use-words.js";
import { endOnScreen, type ScreenSide } from "../model/ends.js";
import { gaugeWords } from "../words/gauge-catalogue.js";
import type { GaugeWords } from "../words/gauge-words.js";
import { DrawnEnds } from "./drawn-ends.js";
import { EndsRow } from "./ends-row.js";
import { NumberQuestion } from "./number-question.js";
import { PlaceDrawing } from "./place-drawing.js";
import styles from "./reading-entry.module.css";
import { endWords, readingText } from "./reading-text.js";
import { Readout } from "./readout.js";
import { SideChoice } from "./side-choice.js";
import { stepText } from "./step-text.js";
import type { Entry } from "./use-entry.js";

export interface ReadingEntryProps {
  readonly entry: Entry;
  readonly driveline: CaseDriveline;
  readonly nameOf: NameOf;
  /** Stands where the pad stands: the phone's own sensor instead of keys. */
  readonly instead: ReactNode;
}

/** One reading: where the gauge goes, which end is lower, what it shows. */
export function ReadingEntry({ entry, driveline, nameOf, instead }: ReadingEntryProps) {
  const words = useWords(gaugeWords);
  const { numbers } = catalogueOf(useLanguage());
  const lineId = useId();
  const { runs } = driveline;
  const { step, side, isFace, chosen, text, changing, isCarried } = entry;
  const { keep, pressKey, pressEnd, choose, setText, setSide } = entry;
  const { title, where } = stepText(step, isFace, driveline, nameOf, words);
  const decimalSign = numbers.plain(0.5, 1).charAt(1) === "," ? "," : ".";
  const end = (hand: ScreenSide) => {
    const of = endOnScreen(runs, side, hand);
    return {
      label: endWords(of, isFace, runs, words),
      isChosen: chosen === of,
      isSure: !isCarried,
      onPress: () => pressEnd(of),
    };
  };
  const [left, right] = [end("left"), end("right")];
  const pad = <NumberPad words={words} decimalSign={decimalSign} onKey={(key) => pressKey(key, decimalSign)} onKeep={() => keep()} />;
  return (
    <section className={styles.entry} aria-label={`${title}, ${where}`}>
      <header className={styles.head}>
        <div className={styles.where}>
          <h2 className={styles.title}>{title}</h2>
          <p className={styles.place}>{where}</p>
        </div>
        <SideChoice side={side} standing={entry.standingSide} onSide={setSide} />
      </header>
      <div className={styles.drawing}>
        <PlaceDrawing step={step} runs={runs} side={side} isFace={isFace} chosen={chosen} display={text} />
        <DrawnEnds names={{ left: left.label, right: right.label }} onPress={(hand) => choose(endOnScreen(runs, side, hand))} />
      </div>
      <EndsRow label={words.faults[isFace ? "lean" : "lower-end"]} left={left} right={right} note={text === "" ? null : `↵ ${words.keep}`}>
        <Readout
          label={words.readout}
          text={text}
          onText={setText}
          onKeep={() => keep()}
          onHand={(hand) => choose(endOnScreen(runs, side, hand))}
          placeholder={changing ? numbers.plain(changing.deg, 1) : numbers.plain(0, 1)}
          isWrong={entry.fault !== null && entry.fault !== "lower-end" && entry.fault !== "lean"}
          describedBy={lineId}
          stepKey={`${step.key} ${entry.changingIndex}`}
        />
      </EndsRow>
      <p
        className={styles.line}
        id={lineId}
        role="status"
        data-wrong={entry.fault !== null || undefined}
        data-mind={isCarried || undefined}
      >
        {lineFor(entry, driveline, words, numbers)}
      </p>
      {entry.question === null ? (instead ?? pad) : <NumberQuestion {...entry.question} isFace={isFace} entry={entry} />}
    </section>
  );
}

/** The most urgent of what there is to say in one line. */
function lineFor({ step, fault, changing, isCarried, isFace, taken }: Entry, { runs }: CaseDriveline, words: GaugeWords, numbers: Numbers) {
  if (fault !== null) return words.faults[fault];
  if (changing) return words.changing(readingText(changing, runs, words, numbers));
  if (isCarried) return words.carried;
  if (taken.length > 0) return words.liftBetween;
  if (step.kind === "pair") return words.pairHelp;
  if (isFace) return words.faceHelp;
  return step.place === "along" ? words.edgeHelp : words.tubeHelp;
}
