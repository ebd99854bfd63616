import type { Case, CaseGauge, CaseGauging, Stage, VehicleSide } from "@halfturn/casefile";
import { standingFindings } from "@halfturn/engine/gauging";
import { catalogueOf, cautionsOf } from "@halfturn/words";
import { useState } from "react";
import { Button } from "../../../controls/button.js";
import { Card } from "../../../controls/card.js";
import { Choice } from "../../../controls/choice.js";
import { Fold } from "../../../controls/fold.js";
import { hasKeys, useKeptDraft } from "../../../device/kept-draft.js";
import { useLanguage, useWords } from "../../../words/use-words.js";
import { sentenceCase } from "../../shared/sentence-case.js";
import { DrivelineChoice } from "../driveline-choice.js";
import type { TiltAvailability } from "../entry/use-tilt.js";
import { lastGauge } from "../model/gauge-presets.js";
import { gaugeWords } from "../words/gauge-catalogue.js";
import { GaugeChoice } from "./gauge-choice.js";
import styles from "./set-up.module.css";
import { SideOfVehicle, StandingChoice, type Wheels } from "./standing-choice.js";
import { ZeroCheck } from "./zero-check.js";

export interface SetUpProps {
  readonly document: Case;
  readonly driveline: number;
  readonly onDriveline: (index: number) => void;
  readonly phone: TiltAvailability;
  readonly onStart: (gauging: CaseGauging, side: VehicleSide) => void;
  /** Back to the readings that there are; null where there are none. */
  readonly onLeave: (() => void) | null;
}

/** What is said before the first reading. */
interface Chosen {
  readonly stage: Stage;
  readonly wheels: Wheels | null;
  readonly rideHeight: CaseGauging["state"]["rideHeight"];
  readonly gauge: CaseGauge;
  readonly side: VehicleSide;
}

const isChosen = (value: unknown): value is Chosen =>
  hasKeys(value, "stage", "wheels", "rideHeight", "gauge", "side") &&
  typeof value.stage === "string" &&
  (value.wheels === null || typeof value.wheels === "string") &&
  typeof value.rideHeight === "string" &&
  hasKeys(value.gauge, "resolutionDeg", "accuracyDeg") &&
  typeof value.side === "string";

/** A gauging before its first reading: two taps where everything is as usual, and nothing assumed that could make every angle wrong. */
export function SetUp({ document, driveline, onDriveline, phone, onStart, onLeave }: SetUpProps) {
  const words = useWords(gaugeWords).setUp;
  const catalogue = catalogueOf(useLanguage());
  const id = document.drivelines[driveline]?.id ?? "";
  const earlier = (document.gauging ?? []).filter((gauging) => gauging.driveline === id);
  // As it stood before, to be seen and put right; never what gives no road angles.
  const stands = earlier.at(-1)?.state.wheels ?? null;
  const [first] = useState<Chosen>(() => ({
    stage: stageNow(document, earlier),
    wheels: stands === "hanging" ? null : stands,
    rideHeight: stands === null || stands === "hanging" ? "normal" : (earlier.at(-1)?.state.rideHeight ?? "normal"),
    gauge: lastGauge(document.gauging ?? []),
    side: earlier.at(-1)?.readings[0]?.side ?? "left",
  }));
  const [begun, keepBegun] = useKeptDraft(`set-up ${id} ${earlier.length}`, isChosen);
  const chosen = begun ?? first;
  const { stage, wheels, rideHeight, gauge, side } = chosen;
  const choose = (change: Partial<Chosen>): void => keepBegun({ ...chosen, ...change });
  const [asked, setAsked] = useState(false);
  const isStop = wheels !== null && standingFindings({ wheels, rideHeight, path: "" }).some(({ severity }) => severity === "stop");
  const start = () => {
    if (wheels === null) return setAsked(true);
    keepBegun(null);
    onStart({ driveline: id, stage, takenAt: new Date().toISOString(), state: { rideHeight, wheels }, gauge, readings: [] }, side);
  };
  return (
    <form
      className={styles.page}
      onSubmit={(event) => {
        event.preventDefault();
        start();
      }}
    >
      <Card
        title={words.title}
        aside={
          onLeave ? (
            <Button kind="quiet" onPress={onLeave}>
              {words.done}
            </Button>
          ) : undefined
        }
      >
        <p className={styles.help}>{words.help}</p>
        <DrivelineChoice document={document} label={words.driveline} driveline={driveline} onDriveline={onDriveline} />
        <StandingChoice
          wheels={wheels}
          rideHeight={rideHeight}
          onChange={(nextWheels, nextHeight) => choose({ wheels: nextWheels, rideHeight: nextHeight })}
        />
        <Choice
          label={words.stage}
          value={stage}
          options={(["as-found", "after"] as const).map((value) => ({ value, label: sentenceCase(catalogue.labels.stages[value]) }))}
          onChange={(next) => choose({ stage: next })}
        />
        <SideOfVehicle side={side} onSide={(next) => choose({ side: next })} />
        <Fold
          title={`${words.gauge}: ${catalogue.numbers.gaugedAngle(gauge.resolutionDeg)} ± ${catalogue.numbers.gaugedAngle(gauge.accuracyDeg)}`}
        >
          <GaugeChoice gauge={gauge} onGauge={(next) => choose({ gauge: next })} phone={phone} />
          <ZeroCheck gauge={gauge} onGauge={(next) => choose({ gauge: next })} />
        </Fold>
        <Cautions />
      </Card>
      <div className={styles.start}>
        {asked && wheels === null ? (
          <p className={styles.fault} role="alert">
            {words.chooseWheels}
          </p>
        ) : null}
        <Button kind={isStop ? "danger" : "main"} size="large" type="submit">
          {isStop ? words.startAnyway : words.start}
        </Button>
      </div>
    </form>
  );
}

/** After, once a correction was made or gauged; before that, another gauging is one more as found. */
const stageNow = ({ corrections = [] }: Case, earlier: readonly CaseGauging[]): Stage =>
  corrections.some(({ state }) => state === "made") || earlier.some(({ stage }) => stage === "after") ? "after" : "as-found";

/** What can hurt somebody at this step, before going under. */
export function Cautions() {
  const words = useWords(gaugeWords).setUp;
  const { cautions } = catalogueOf(useLanguage());
  return (
    <Fold title={words.cautions} open>
      <ul className={styles.cautions}>
        {cautionsOf(cautions, "gauge").map((text) => (
          <li key={text}>{text}</li>
        ))}
        <li>{cautions.defersTo}</li>
      </ul>
    </Fold>
  );
}
