import { catalogueOf } from "@halfturn/words";
import { useId, useState } from "react";
import { NumberPad } from "../../../controls/number-pad.js";
import { afterKey } from "../../../controls/pad-text.js";
import { hasKeys, useKeptDraft } from "../../../device/kept-draft.js";
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

interface Typed {
  readonly text: string;
  readonly lower: DisplaySide | null;
}

const NOTHING: Typed = { text: "", lower: null };

const isTyped = (value: unknown): value is Typed =>
  hasKeys(value, "text", "lower") &&
  typeof value.text === "string" &&
  (value.lower === null || value.lower === "display-left" || value.lower === "display-right");

/** One reading of the turn-round check: what the display shows, and which side of it is lower. */
export function ZeroEntry({ step, onReading }: ZeroEntryProps) {
  const all = useWords(gaugeWords);
  const words = all.setUp;
  const { numbers } = catalogueOf(useLanguage());
  const lineId = useId();
  const [typed, keepTyped] = useKeptDraft(`zero ${step}`, isTyped);
  const { text, lower } = typed ?? NOTHING;
  const [fault, setFault] = useState<string | null>(null);
  const decimalSign = numbers.plain(0.5, 1).charAt(1) === "," ? "," : ".";

  const change = (next: string): void => {
    keepTyped({ text: next, lower });
    setFault(null);
  };
  const keep = (side: DisplaySide | null) => {
    const read = typedAngle(text);
    if (!read.ok) return setFault(all.faults[read.fault]);
    if (read.deg >= 90) return setFault(all.faults["too-steep"]);
    if (read.deg > 0 && side === null) return setFault(words.zeroDisplayAsk);
    keepTyped(null);
    onReading(zeroReading(read.deg, side));
  };
  const press = (side: DisplaySide): void => {
    keepTyped({ text, lower: side });
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
          onHand={(hand) => keepTyped({ text, lower: hand === "left" ? "display-left" : "display-right" })}
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
