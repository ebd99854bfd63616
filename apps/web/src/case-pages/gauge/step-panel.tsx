import type { Finding } from "@halfturn/engine/findings";
import type { NameOf } from "@halfturn/words";
import { useState } from "react";
import { Button } from "../../controls/button.js";
import { Choice } from "../../controls/choice.js";
import type { Units } from "../../device/settings.js";
import { useWords } from "../../words/use-words.js";
import { AllRead } from "./entry/all-read.js";
import { PhonePanel } from "./entry/phone-panel.js";
import { ReadingEntry } from "./entry/reading-entry.js";
import { TakenList } from "./entry/taken-list.js";
import { TapeEntry } from "./entry/tape-entry.js";
import { useEntry } from "./entry/use-entry.js";
import type { Standing } from "./entry/use-standing.js";
import { endOnScreen } from "./model/ends.js";
import { isPhone } from "./model/gauge-presets.js";
import { dropHeading, dropReading, keepHeading, noteReading } from "./model/keep-reading.js";
import { type ReadingStep, type TapeStep, takenAt } from "./model/step.js";
import { zeroFound } from "./model/zero-check.js";
import { gaugeWords } from "./words/gauge-catalogue.js";

export interface StepPanelProps {
  readonly standing: Standing;
  readonly nameOf: NameOf;
  readonly slipped: readonly number[];
  readonly advice: readonly Finding[];
  readonly units: Units;
  readonly onSetUp: () => void;
}

/** What one does at the step where one stands. */
export function StepPanel(props: StepPanelProps) {
  const { standing, advice, nameOf, onSetUp } = props;
  const { step } = standing;
  if (step === null)
    return (
      <AllRead
        advice={advice}
        nameOf={nameOf}
        onTape={() => standing.goTo({ way: "tape", step: 0 })}
        onRead={standing.goToKey}
        onZero={onSetUp}
      />
    );
  return step.kind === "tape" ? <TapePanel key={step.key} {...props} step={step} /> : <ReadingPanel {...props} step={step} />;
}

function TapePanel({ standing, nameOf, units, step }: StepPanelProps & { readonly step: TapeStep }) {
  const words = useWords(gaugeWords);
  const { driveline, gauging, part, editGauging, goOn } = standing;
  const last = takenAt(step, gauging).at(-1) ?? null;
  return (
    <>
      <TapeEntry
        step={step}
        driveline={driveline}
        gauging={gauging}
        part={part}
        nameOf={nameOf}
        units={units}
        onKeep={(heading) => {
          editGauging((current) => keepHeading(current, heading, last));
          goOn(keepHeading(gauging, heading, last));
        }}
      />
      {last === null ? null : (
        <Button kind="quiet" onPress={() => editGauging((current) => dropHeading(current, last))}>
          {words.remove}
        </Button>
      )}
    </>
  );
}

function ReadingPanel({ standing, nameOf, slipped, step }: StepPanelProps & { readonly step: ReadingStep }) {
  const { driveline, gauging, editGauging } = standing;
  const entry = useEntry(standing, step);
  const { isFace, setFace, keepMeasured, side } = entry;
  const words = useWords(gaugeWords);
  const withPhone = isPhone(gauging.gauge);
  const [isTyping, setTyping] = useState(false);
  const pose = isFace ? "across" : "along";
  const phone = (
    <PhonePanel
      key={pose}
      pose={pose}
      zeroIsKnown={zeroFound(gauging.gauge.zeroCheck ?? []) !== null}
      onTake={(slopeDeg) => keepMeasured(slopeDeg, endOnScreen(driveline.runs, side, slopeDeg < 0 ? "left" : "right"))}
      onType={() => setTyping(true)}
    />
  );
  return (
    <>
      <ReadingEntry entry={entry} driveline={driveline} nameOf={nameOf} instead={withPhone && !isTyping ? phone : null} />
      {step.kind === "place" ? (
        <Choice
          label={words.how}
          value={isFace ? "face" : "edge"}
          options={[
            { value: "face", label: words.face },
            { value: "edge", label: words.edge },
          ]}
          onChange={(how) => setFace(how === "face")}
        />
      ) : null}
      {withPhone && isTyping ? <Button onPress={() => setTyping(false)}>{words.phone.use}</Button> : null}
      <TakenList
        gauging={gauging}
        driveline={driveline}
        taken={entry.taken}
        slipped={slipped}
        onChange={standing.change}
        onRemove={(reading) => editGauging((current) => dropReading(current, reading))}
        onNote={(reading, notes) => editGauging((current) => noteReading(current, reading, notes))}
      />
    </>
  );
}
