import { catalogueOf } from "@halfturn/words";
import { Button } from "../../../controls/button.js";
import { useLanguage, useWords } from "../../../words/use-words.js";
import { displayed, type PhonePose } from "../model/phone-tilt.js";
import { gaugeWords } from "../words/gauge-catalogue.js";
import styles from "./phone-panel.module.css";
import { useTilt } from "./use-tilt.js";

export interface PhonePanelProps {
  readonly pose: PhonePose;
  /** The zero of a phone that nobody checked may be a degree out. */
  readonly zeroIsKnown: boolean;
  /** In degrees, positive where the reader's right is lower. */
  readonly onTake: (slopeDeg: number) => void;
  readonly onType: () => void;
}

/** Half of what the readings may spread while a phone lies still (common practice, no source). */
const STILL_DEG = 0.15;

/** The phone as the gauge: held against the metal, it shows its slope; a tap takes it. */
export function PhonePanel({ pose, zeroIsKnown, onTake, onType }: PhonePanelProps) {
  const words = useWords(gaugeWords).phone;
  const { numbers } = catalogueOf(useLanguage());
  const { tilt, start } = useTilt(pose);
  const isStill = tilt.state === "reading" && tilt.spreadDeg <= STILL_DEG;
  return (
    <div className={styles.panel}>
      <p>{pose === "along" ? words.holdAlong : words.holdAcross}</p>
      {zeroIsKnown ? null : <p className={styles.mind}>{words.needsZero}</p>}
      {tilt.state === "off" || tilt.state === "denied" ? (
        <Button kind="main" size="large" onPress={() => void start()}>
          {words.permission}
        </Button>
      ) : null}
      {tilt.state === "denied" ? <p role="alert">{words.denied}</p> : null}
      {tilt.state === "asking" || tilt.state === "waiting" ? <p role="status">{words.waiting}</p> : null}
      {tilt.state === "held-wrongly" ? (
        <p className={styles.mind} role="status">
          {tilt.fault === "lying-flat" ? words.lyingFlat : words.notOnEdge}
        </p>
      ) : null}
      {tilt.state === "reading" ? (
        <>
          <p className={styles.live}>
            <span className={styles.number}>{numbers.gaugedAngle(displayed(tilt.slopeDeg))}</span>
            <span>{tilt.slopeDeg < 0 ? "◣" : "◢"}</span>
            <span className={styles.state}>{isStill ? words.still : words.moving}</span>
          </p>
          <Button kind="main" size="large" isDisabled={!isStill} onPress={() => onTake(tilt.slopeDeg)}>
            {words.take}
          </Button>
        </>
      ) : null}
      <Button kind="quiet" onPress={onType}>
        {words.typeInstead}
      </Button>
    </div>
  );
}
