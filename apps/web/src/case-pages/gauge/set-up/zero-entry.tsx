import { catalogueOf } from "@halfturn/words";
import { useId, useState } from "react";
import { NumberPad } from "../../../controls/number-pad.js";
import { afterKey } from "../../../controls/pad-text.js";
import { useLanguage, useWords } from "../../../words/use-words.js";
import { EndsRow } from "../entry/ends-row.js";
import { Readout } from "../entry/readout.js";
import { typedAngle } from "../model/entry-text.js";
import { type DisplaySide, type ZeroReading, zeroReading } from "../model/zero-check.js";
import { gaugeWords } from "../words/gauge-catalogue.js";
import styles from "./set-up.module.css";

export interface ZeroEntryProps {
  /** Takes the keys again when it changes. */
  readonly step: string;
  readonly onReading: (reading: ZeroReading) => void;
}

/** One reading of the turn-round check: what the display shows, and which side of it is lower. */
export function ZeroEntry({ step, onReading }: ZeroEntryProps) {
  const all = useWords(gaugeWords);
  const words = all.setUp;
  const { numbers } = catalogueOf(useLanguage());
  const lineId = useId();
  const [text, setText] = useState("");
  const [lower, setLower] = useState<DisplaySide | null>(null);
  const [fault, setFault] = useState<string | null>(null);
  const decimalSign = numbers.plain(0.5, 1).charAt(1) === "," ? "," : ".";

  const change = (next: string): void => {
    setText(next);
    setFault(null);
  };
  const keep = (side: DisplaySide | null) => {
    const typed = typedAngle(text);
    if (!typed.ok) return setFault(all.faults[typed.fault]);
    if (typed.deg >= 90) return setFault(all.faults["too-steep"]);
    if (typed.deg > 0 && side === null) return setFault(words.zeroDisplayAsk);
    onReading(zeroReading(typed.deg, side));
  };
  const press = (side: DisplaySide): void => {
    setLower(side);
    setFault(null);
    if (text !== "") keep(side);
  };
  const button = (side: DisplaySide) => ({ label: words.zeroDisplay[side], isChosen: lower === side, onPress: () => press(side) });
  return (
    <>
      <EndsRow
        label={words.zeroDisplayAsk}
        left={button("display-left")}
        right={button("display-right")}
        note={text === "" ? null : `↵ ${all.keep}`}
      >
        <Readout
          label={all.readout}
          text={text}
          onText={change}
          onKeep={() => keep(lower)}
          onHand={(hand) => setLower(hand === "left" ? "display-left" : "display-right")}
          placeholder={numbers.plain(0, 1)}
          isWrong={fault !== null}
          describedBy={lineId}
          stepKey={step}
        />
      </EndsRow>
      <p id={lineId} className={styles.fault} role="status">
        {fault}
      </p>
      <NumberPad
        words={all}
        decimalSign={decimalSign}
        onKey={(key) => change(afterKey(text, key, decimalSign))}
        onKeep={() => keep(lower)}
      />
    </>
  );
}
