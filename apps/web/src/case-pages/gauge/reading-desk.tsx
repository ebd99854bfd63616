import type { AnalysedDriveline, Case, CaseGauging, VehicleSide } from "@halfturn/casefile";
import type { Finding } from "@halfturn/engine/findings";
import { catalogueOf, namesOf } from "@halfturn/words";
import { useEffect, useRef, useState } from "react";
import { Button } from "../../controls/button.js";
import { Choice } from "../../controls/choice.js";
import { useFollowed } from "../../controls/use-followed.js";
import type { Settings } from "../../device/settings.js";
import { useLanguage, useWords } from "../../words/use-words.js";
import { quickAnalyses } from "../../worker/worker-client.js";
import { StepLink } from "../shared/step-link.js";
import { SlipAlert } from "./entry/slip-alert.js";
import { useStanding } from "./entry/use-standing.js";
import { YokesCard } from "./entry/yokes-card.js";
import { withGauging } from "./model/keep-reading.js";
import { areAllSeen } from "./model/phasings.js";
import { adviceOf, slipsOf } from "./model/slips.js";
import { WAYS } from "./model/step.js";
import { JointsSoFar, jointsSoFar } from "./progress/joints-so-far.js";
import { ProgressStrip } from "./progress/progress-strip.js";
import styles from "./reading-desk.module.css";
import { StepPanel } from "./step-panel.js";
import { gaugeWords } from "./words/gauge-catalogue.js";

export interface ReadingDeskProps {
  readonly document: Case;
  /** Its place in `drivelines`. */
  readonly driveline: number;
  /** Its place in `gauging`. */
  readonly index: number;
  readonly gauging: CaseGauging;
  /** The place of what is half typed for this gauging. */
  readonly part: string;
  readonly editGauging: (change: (gauging: CaseGauging) => CaseGauging) => void;
  /** null where the result is of another gauging, or on its way. */
  readonly analysed: AnalysedDriveline | null;
  readonly busy: boolean;
  readonly settings: Settings;
  readonly startSide: VehicleSide;
  readonly onSetUp: () => void;
}

const NO_ADVICE: readonly Finding[] = [];

/** Where readings are taken one by one, and what they say stands beside them. */
export function ReadingDesk(props: ReadingDeskProps) {
  const { document, index, part, gauging, editGauging, analysed, busy, settings, startSide, onSetUp } = props;
  const words = useWords(gaugeWords);
  const catalogue = catalogueOf(useLanguage());
  const driveline = document.drivelines[props.driveline] as Case["drivelines"][number];
  const nameOf = namesOf(document, props.driveline, catalogue);
  const foresee = (next: CaseGauging): void => void quickAnalyses.ask(withGauging(document, index, () => next));
  const standing = useStanding({ driveline, gauging, part, editGauging, foresee, startSide });
  const [left, setLeft] = useState<readonly string[]>([]);
  const [folded, setFolded] = useState<string | null>(null);
  const { place, steps, step } = standing;

  const slips = slipsOf(analysed, index, gauging).filter(({ key }) => !left.includes(key));
  const slip = slips[0];
  const slipped = [...new Set(slips.flatMap(({ readings }) => readings))];
  const joints = jointsSoFar(driveline, analysed, catalogue);

  // Seen, and something else is done first: below the pad, which keeps its place.
  const isFolded = slip !== undefined && folded === slip.key && step !== null;
  const alert = slip ? (
    <SlipAlert
      slip={slip}
      gauging={gauging}
      driveline={driveline}
      nameOf={nameOf}
      isFolded={isFolded}
      onFold={(isFolded) => setFolded(isFolded ? slip.key : null)}
      onReadAgain={(reading) => {
        setFolded(slip.key);
        standing.change(reading);
      }}
      side={standing.side}
      onLowerEnd={(shaft, end) => {
        // Where it is noted so already, it was right: nothing changes, and nobody asks again.
        setLeft([...left, slip.key]);
        standing.answerLowerEnd(shaft, end);
      }}
      onZero={onSetUp}
    />
  ) : null;
  // What nobody had seen comes before what would only make the result surer, and stays there once it is answered.
  const [isSeen] = useState(() => areAllSeen(document, driveline, index));
  // The angles go first; what would make them surer, and the questions about the yokes, are drawn as the device can.
  const restIsDue = useFollowed(step === null) && step === null;
  const yokes = restIsDue ? (
    <YokesCard document={document} driveline={props.driveline} index={index} part={part} nameOf={nameOf} editGauging={editGauging} />
  ) : null;
  // Whoever has read enough sees the way on without looking for it.
  const isDone = step === null && !slip;
  const next = gauging.stage === "after" ? "prove" : "explain";
  const top = useRef<HTMLDivElement>(null);
  // biome-ignore lint/correctness/useExhaustiveDependencies: the next place, and what does not fit, come into sight
  useEffect(() => {
    const page = top.current?.closest("main");
    // To scroll costs a slow device some milliseconds, even where nothing moves.
    if (page && page.scrollTop !== 0) page.scrollTo(0, 0);
  }, [step?.key, slip?.key]);

  return (
    <div ref={top} className={styles.desk} data-done={isDone || undefined}>
      <div className={styles.strip}>
        <ProgressStrip
          steps={steps}
          current={place.step}
          gauging={gauging}
          driveline={driveline}
          nameOf={nameOf}
          slipped={slipped}
          joints={joints}
          units={settings.units}
          onStep={(to) => standing.goTo({ way: place.way, step: to })}
        />
        {isDone ? (
          <div className={styles.onward}>
            <StepLink kind="main" id={document.id} step={next} label={words.onTo(catalogue.labels.steps[next])} />
          </div>
        ) : null}
      </div>
      <div className={styles.entry}>
        {isFolded ? null : alert}
        {isSeen ? null : yokes}
        <StepPanel
          standing={standing}
          nameOf={nameOf}
          slipped={slipped}
          advice={restIsDue ? adviceOf(analysed, index) : NO_ADVICE}
          units={settings.units}
          onSetUp={onSetUp}
        />
        {isFolded ? alert : null}
        {isSeen ? yokes : null}
      </div>
      <div className={styles.joints}>
        <JointsSoFar joints={joints} analysed={analysed} busy={busy} />
      </div>
      <aside className={styles.beside}>
        <Choice
          label={words.wayLabel}
          value={place.way}
          options={WAYS.map((value) => ({ value, label: words.ways[value] }))}
          onChange={(way) => standing.goTo({ way, step: 0 })}
        />
        <Button onPress={onSetUp}>{words.setUp.open}</Button>
        <p className={styles.keys}>{words.keysHelp}</p>
      </aside>
    </div>
  );
}
