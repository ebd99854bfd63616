import type { CaseGauge } from "@halfturn/casefile";
import { catalogueOf } from "@halfturn/words";
import { useId, useState } from "react";
import { Button } from "../../../controls/button.js";
import { NumberPad } from "../../../controls/number-pad.js";
import { afterKey } from "../../../controls/pad-text.js";
import { useLanguage, useWords } from "../../../words/use-words.js";
import { EndsRow } from "../entry/ends-row.js";
import { Readout } from "../entry/readout.js";
import { typedAngle } from "../model/entry-text.js";
import { type DisplaySide, withoutZeroCheck, withZeroPair, type ZeroReading, zeroFound, zeroReading } from "../model/zero-check.js";
import { gaugeWords } from "../words/gauge-catalogue.js";
import styles from "./set-up.module.css";

export interface ZeroCheckProps {
  readonly gauge: CaseGauge;
  readonly onGauge: (gauge: CaseGauge) => void;
}

/** Beyond this a zero is large for a gauge that is well (common practice, no source). */
const LARGE_ZERO_DEG = 1;

/** The turn-round check: two readings on one spot, and the zero that they show. */
export function ZeroCheck({ gauge, onGauge }: ZeroCheckProps) {
  const words = useWords(gaugeWords).setUp;
  const { numbers } = catalogueOf(useLanguage());
  const [isOpen, setOpen] = useState(false);
  const zero = zeroFound(gauge.zeroCheck ?? []);
  const finished = (first: ZeroReading, turned: ZeroReading): void => {
    setOpen(false);
    onGauge(withZeroPair(gauge, first, turned));
  };
  return (
    <section className={styles.group}>
      <h3>{words.zero}</h3>
      {isOpen ? (
        <ZeroPad onFinished={finished} />
      ) : (
        <>
          <p role="status">{zero === null ? words.zeroNone : words.zeroFound(`${zero < 0 ? "−" : ""}${numbers.angle(Math.abs(zero))}`)}</p>
          {zero !== null && Math.abs(zero) > LARGE_ZERO_DEG ? <p className={styles.mind}>{words.zeroLarge}</p> : null}
          <div className={styles.row}>
            <Button onPress={() => setOpen(true)}>{zero === null ? words.zeroStart : words.zeroAgain}</Button>
            {zero === null ? null : (
              <Button kind="quiet" onPress={() => onGauge(withoutZeroCheck(gauge))}>
                {words.zeroForget}
              </Button>
            )}
          </div>
        </>
      )}
    </section>
  );
}

const SIDES: readonly DisplaySide[] = ["display-left", "display-right"];

function ZeroPad({ onFinished }: { readonly onFinished: (first: ZeroReading, turned: ZeroReading) => void }) {
  const all = useWords(gaugeWords);
  const words = all.setUp;
  const { numbers } = catalogueOf(useLanguage());
  const lineId = useId();
  const [first, setFirst] = useState<ZeroReading | null>(null);
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
    const reading = zeroReading(typed.deg, side);
    if (first) return onFinished(first, reading);
    setFirst(reading);
    setText("");
    setLower(null);
  };
  const press = (side: DisplaySide): void => {
    setLower(side);
    setFault(null);
    if (text !== "") keep(side);
  };
  const button = (side: DisplaySide) => ({ label: words.zeroDisplay[side], isChosen: lower === side, onPress: () => press(side) });
  return (
    <div className={styles.zero}>
      <p>{words.zeroHelp}</p>
      <p className={styles.step}>
        {words.zeroStep(first ? 2 : 1)}: <strong>{first ? words.zeroTurned : words.zeroFirst}</strong>
        {first
          ? ` (${words.zeroFirst}: ${numbers.gaugedAngle(first.deg)}${first.lower ? `, ${words.zeroDisplay[first.lower].toLowerCase()}` : ""})`
          : ""}
      </p>
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
          onHand={(hand) => setLower(SIDES[hand === "left" ? 0 : 1] as DisplaySide)}
          placeholder={numbers.plain(0, 1)}
          isWrong={fault !== null}
          describedBy={lineId}
          stepKey={first ? "turned" : "first"}
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
    </div>
  );
}
