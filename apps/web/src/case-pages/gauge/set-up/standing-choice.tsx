import type { CaseGauging, VehicleSide } from "@halfturn/casefile";
import { standingFindings } from "@halfturn/engine/gauging";
import { catalogueOf, findingText } from "@halfturn/words";
import { Choice } from "../../../controls/choice.js";
import { useLanguage, useWords } from "../../../words/use-words.js";
import { sentenceCase } from "../../shared/sentence-case.js";
import { gaugeWords } from "../words/gauge-catalogue.js";
import styles from "./set-up.module.css";

export type Standing = CaseGauging["state"];
export type Wheels = Standing["wheels"];

const WHEELS = ["on-drive-on-lift", "on-ground", "axle-on-stands-at-ride-height", "hanging"] as const;
const RIDE_HEIGHTS = ["normal", "laden", "drooped", "compressed"] as const;

export interface StandingChoiceProps {
  readonly wheels: Wheels | null;
  readonly rideHeight: Standing["rideHeight"];
  readonly onChange: (wheels: Wheels | null, rideHeight: Standing["rideHeight"]) => void;
}

/** How the vehicle stands; a state that gives no road angles is said at once. */
export function StandingChoice({ wheels, rideHeight, onChange }: StandingChoiceProps) {
  const words = useWords(gaugeWords).setUp;
  const catalogue = catalogueOf(useLanguage());
  const { labels } = catalogue;
  const findings = standingFindings({ wheels: wheels ?? "on-ground", rideHeight, path: "" });
  return (
    <>
      <Choice
        label={words.wheels}
        value={wheels}
        options={WHEELS.map((value) => ({ value, label: sentenceCase(labels.wheelSupports[value]) }))}
        // Hanging wheels let the axle drop; back on them, it stands as usual until somebody says otherwise.
        onChange={(next) => onChange(next, next === "hanging" ? "drooped" : wheels === "hanging" ? "normal" : rideHeight)}
      />
      <Choice
        label={words.rideHeight}
        value={rideHeight}
        options={RIDE_HEIGHTS.map((value) => ({ value, label: sentenceCase(labels.rideHeights[value]) }))}
        onChange={(next) => onChange(wheels, next)}
      />
      {findings.map((finding) => {
        const { title, says, doNext } = findingText(catalogue, finding);
        return (
          <div key={finding.code} className={finding.severity === "stop" ? styles.stop : styles.mind} role="alert">
            <h3>
              <span aria-hidden="true">{finding.severity === "stop" ? "▲ " : ""}</span>
              {title}
            </h3>
            <p>{says}</p>
            <p>
              <strong>{doNext}</strong>
            </p>
          </div>
        );
      })}
    </>
  );
}

export interface SideOfVehicleProps {
  readonly side: VehicleSide;
  readonly onSide: (side: VehicleSide) => void;
}

/** The side that everything is read from. */
export function SideOfVehicle({ side, onSide }: SideOfVehicleProps) {
  const words = useWords(gaugeWords).setUp;
  const { labels } = catalogueOf(useLanguage());
  return (
    <div className={styles.group}>
      <Choice
        label={words.side}
        value={side}
        options={[
          { value: "left", label: labels.left },
          { value: "right", label: labels.right },
        ]}
        onChange={onSide}
      />
      <p className={styles.help}>{words.sideHelp}</p>
    </div>
  );
}
