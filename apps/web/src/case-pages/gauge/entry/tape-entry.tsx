import type { CaseDriveline, CaseGauging, CaseHeading, VehicleSide } from "@halfturn/casefile";
import { catalogueOf, type NameOf } from "@halfturn/words";
import { useId, useState } from "react";
import { NumberPad } from "../../../controls/number-pad.js";
import { afterKey } from "../../../controls/pad-text.js";
import { TextEntry } from "../../../controls/text-entry.js";
import { hasKeys, useKeptDraft } from "../../../device/kept-draft.js";
import type { Units } from "../../../device/settings.js";
import { useLanguage, useWords } from "../../../words/use-words.js";
import { vehicleEndOf } from "../model/ends.js";
import type { TapeStep } from "../model/step.js";
import { lengthText, lengthUnit, typedHeading } from "../model/tape-text.js";
import { gaugeWords } from "../words/gauge-catalogue.js";
import { EndsRow } from "./ends-row.js";
import { PlanDrawing } from "./plan-drawing.js";
import styles from "./reading-entry.module.css";
import { Readout } from "./readout.js";

export interface TapeEntryProps {
  readonly step: TapeStep;
  readonly driveline: CaseDriveline;
  readonly gauging: CaseGauging;
  /** The place of what is half typed for this gauging. */
  readonly part: string;
  readonly nameOf: NameOf;
  readonly units: Units;
  readonly onKeep: (heading: CaseHeading) => void;
}

interface Typed {
  readonly lateral: string;
  readonly over: string;
  readonly toward: VehicleSide | null;
}

const isTyped = (value: unknown): value is Typed =>
  hasKeys(value, "lateral", "over", "toward") &&
  typeof value.lateral === "string" &&
  typeof value.over === "string" &&
  (value.toward === null || value.toward === "left" || value.toward === "right");

/** How far a shaft runs to one side, by tape: the offset of its driven end, over a length. A shaft has one; measuring it again replaces it. */
export function TapeEntry({ step, driveline, gauging, part, nameOf, units, onKeep }: TapeEntryProps) {
  const words = useWords(gaugeWords);
  const { numbers } = catalogueOf(useLanguage());
  const lineId = useId();
  const decimalSign = numbers.plain(0.5, 1).charAt(1) === "," ? "," : ".";
  const before = gauging.headings?.findLast(({ of }) => of === step.shaft);
  const usualMm = before && "lateralMm" in before ? before.overMm : undefined;
  const lengthMm = usualMm ?? driveline.sections.find(({ id }) => id === step.shaft)?.lengthMm;
  // A bare number means something else in other units: what was typed in these waits for them.
  const [typed, keepTyped] = useKeptDraft(`${part}/tape ${step.shaft} ${lengthUnit(units)}`, isTyped);
  const usualOver = lengthMm === undefined ? "" : lengthText(lengthMm, units, decimalSign, false);
  const { lateral, over, toward } = typed ?? { lateral: "", over: usualOver, toward: before?.toward ?? null };
  const [fault, setFault] = useState<keyof typeof words.tapeFaults | null>(null);

  const keep = (side: VehicleSide | null) => {
    // The length that nobody touched stays what it is, whatever it was rounded to for showing.
    const length = over === usualOver && lengthMm !== undefined ? `${lengthMm} mm` : over;
    const read = typedHeading({ shaft: step.shaft, lateral, over: length, toward: side }, units);
    if (!read.ok) return setFault(read.fault);
    keepTyped(null);
    onKeep(read.heading);
  };
  const change = (text: string): void => {
    keepTyped({ lateral: text, over, toward });
    setFault(null);
  };
  const press = (side: VehicleSide): void => {
    keepTyped({ lateral, over, toward: side });
    setFault(null);
    if (lateral !== "") keep(side);
  };
  const button = (side: VehicleSide) => ({ label: words.toward[side], isChosen: toward === side, onPress: () => press(side) });
  const end = words.shaftEnd["driven-end"];
  const drivenEnd = `${words.vehicleEnd[vehicleEndOf(driveline.runs, "driven-end")]} (${end})`;
  return (
    <section className={styles.entry} aria-label={`${nameOf(step.shaft)}, ${words.sideways}`}>
      <header className={styles.where}>
        <h2 className={styles.title}>{nameOf(step.shaft)}</h2>
        <p className={styles.place}>{words.sideways}</p>
      </header>
      <div className={styles.drawing}>
        <PlanDrawing runs={driveline.runs} toward={toward} />
      </div>
      <EndsRow
        label={words.tapeFaults.toward}
        left={button("left")}
        right={button("right")}
        note={lateral === "" ? null : `↵ ${words.keep}`}
      >
        <Readout
          label={`${words.lateral} (${lengthUnit(units)})`}
          unit={lengthUnit(units)}
          text={lateral}
          onText={change}
          onKeep={() => keep(toward)}
          placeholder={before && "lateralMm" in before ? lengthText(before.lateralMm, units, decimalSign, false) : "0"}
          isWrong={fault === "lateral" || fault === "too-wide"}
          describedBy={lineId}
          stepKey={step.key}
        />
      </EndsRow>
      <p className={styles.line} id={lineId} role="status" data-wrong={fault !== null || undefined}>
        {fault === null ? "" : words.tapeFaults[fault]}
      </p>
      <NumberPad
        words={words}
        decimalSign={decimalSign}
        withFractions={units === "us"}
        onKey={(key) => change(afterKey(lateral, key, decimalSign))}
        onKeep={() => keep(toward)}
      />
      <TextEntry
        label={`${words.over} (${lengthUnit(units)})`}
        value={over}
        onChange={(text) => keepTyped({ lateral, over: text, toward })}
      />
      <p className={styles.place}>{words.tapeHelp(drivenEnd)}</p>
    </section>
  );
}
