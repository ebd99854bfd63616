import type { CaseGauge } from "@halfturn/casefile";
import { catalogueOf } from "@halfturn/words";
import { Choice } from "../../../controls/choice.js";
import { useLanguage, useWords } from "../../../words/use-words.js";
import type { TiltAvailability } from "../entry/use-tilt.js";
import { ACCURACIES_DEG, isPhone, PHONE_GAUGE, RESOLUTIONS_DEG, USUAL_GAUGE } from "../model/gauge-presets.js";
import { gaugeWords } from "../words/gauge-catalogue.js";
import styles from "./set-up.module.css";

export interface GaugeChoiceProps {
  readonly gauge: CaseGauge;
  readonly onGauge: (gauge: CaseGauge) => void;
  /** Whether this device can tell its tilt, and if not, why. */
  readonly phone: TiltAvailability;
}

/** What is read with: its display's step and its maker's error band. A value that is not among the usual ones is shown beside them. */
export function GaugeChoice({ gauge, onGauge, phone }: GaugeChoiceProps) {
  const all = useWords(gaugeWords);
  const words = all.setUp;
  const { numbers } = catalogueOf(useLanguage());
  const among = (usual: readonly number[], own: number) =>
    [...new Set([...usual, own])].sort((a, b) => a - b).map((deg) => ({ value: String(deg), label: numbers.gaugedAngle(deg) }));
  return (
    <>
      {phone === "insecure" ? <p className={styles.help}>{all.phone.insecure}</p> : null}
      {phone === "here" || isPhone(gauge) ? (
        <div className={styles.group}>
          <Choice
            label={words.gauge}
            value={isPhone(gauge) ? "phone" : "typed"}
            options={[
              { value: "typed", label: words.typed },
              { value: "phone", label: words.phone },
            ]}
            onChange={(kind) => onGauge(kind === "phone" ? PHONE_GAUGE : USUAL_GAUGE)}
          />
          {isPhone(gauge) ? <p className={styles.help}>{words.phoneHelp}</p> : null}
        </div>
      ) : null}
      <Choice
        label={words.resolution}
        value={String(gauge.resolutionDeg)}
        options={among(RESOLUTIONS_DEG, gauge.resolutionDeg)}
        onChange={(deg) => onGauge({ ...gauge, resolutionDeg: Number(deg) })}
      />
      <Choice
        label={words.accuracy}
        value={String(gauge.accuracyDeg)}
        options={among(ACCURACIES_DEG, gauge.accuracyDeg)}
        onChange={(deg) => onGauge({ ...gauge, accuracyDeg: Number(deg) })}
      />
    </>
  );
}
