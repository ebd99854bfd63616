import type { CaseGauge } from "@halfturn/casefile";
import { catalogueOf } from "@halfturn/words";
import { useState } from "react";
import { Button } from "../../../controls/button.js";
import { hasKeys, useKeptDraft } from "../../../device/kept-draft.js";
import { useLanguage, useWords } from "../../../words/use-words.js";
import { PhonePanel } from "../entry/phone-panel.js";
import { isPhone } from "../model/gauge-presets.js";
import { displayed } from "../model/phone-tilt.js";
import { withoutZeroCheck, withZeroPair, type ZeroReading, zeroFound, zeroReading } from "../model/zero-check.js";
import { gaugeWords } from "../words/gauge-catalogue.js";
import styles from "./set-up.module.css";
import { ZeroEntry } from "./zero-entry.js";

/** A check that was begun, and its first reading if there is one. */
interface Begun {
  readonly first: ZeroReading | null;
}

const isBegun = (value: unknown): value is Begun =>
  hasKeys(value, "first") && (value.first === null || (hasKeys(value.first, "deg") && typeof value.first.deg === "number"));

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
  // Half a check is still there after a look at another page.
  const [begun, begin] = useKeptDraft("zero", isBegun);
  const zero = zeroFound(gauge.zeroCheck ?? []);
  const finished = (first: ZeroReading, turned: ZeroReading): void => {
    begin(null);
    onGauge(withZeroPair(gauge, first, turned));
  };
  return (
    <section className={styles.group}>
      <h3>{words.zero}</h3>
      {begun ? (
        <ZeroPad withPhone={isPhone(gauge)} first={begun.first} onFirst={(first) => begin({ first })} onFinished={finished} />
      ) : (
        <>
          <p role="status">{zero === null ? words.zeroNone : words.zeroFound(`${zero < 0 ? "−" : ""}${numbers.angle(Math.abs(zero))}`)}</p>
          {zero !== null && Math.abs(zero) > LARGE_ZERO_DEG ? <p className={styles.mind}>{words.zeroLarge}</p> : null}
          <div className={styles.row}>
            <Button onPress={() => begin({ first: null })}>{zero === null ? words.zeroStart : words.zeroAgain}</Button>
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

interface ZeroPadProps {
  readonly withPhone: boolean;
  readonly first: ZeroReading | null;
  readonly onFirst: (first: ZeroReading) => void;
  readonly onFinished: (first: ZeroReading, turned: ZeroReading) => void;
}

function ZeroPad({ withPhone, first, onFirst, onFinished }: ZeroPadProps) {
  const words = useWords(gaugeWords).setUp;
  const { numbers } = catalogueOf(useLanguage());
  const [isTyping, setTyping] = useState(!withPhone);
  const take = (reading: ZeroReading): void => {
    if (first) onFinished(first, reading);
    else onFirst(reading);
  };
  const step = first ? "turned" : "first";
  return (
    <div className={styles.zero}>
      <p>{isTyping ? words.zeroHelp : words.zeroPhoneHelp}</p>
      <p className={styles.step}>
        {words.zeroStep(first ? 2 : 1)}: <strong>{first ? words.zeroTurned : words.zeroFirst}</strong>
        {first
          ? ` (${words.zeroFirst}: ${numbers.gaugedAngle(first.deg)}${first.lower ? `, ${words.zeroDisplay[first.lower].toLowerCase()}` : ""})`
          : ""}
      </p>
      {isTyping ? (
        <ZeroEntry key={step} step={step} onReading={take} />
      ) : (
        <PhonePanel
          key={step}
          pose="along"
          zeroIsKnown
          onTake={(slopeDeg) => take(zeroReading(displayed(slopeDeg), slopeDeg < 0 ? "display-left" : "display-right"))}
          onType={() => setTyping(true)}
        />
      )}
    </div>
  );
}
