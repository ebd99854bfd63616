import type { CaseGauging, VehicleSide } from "@halfturn/casefile";
import { Button } from "../../../controls/button.js";
import { Card } from "../../../controls/card.js";
import { useWords } from "../../../words/use-words.js";
import type { TiltAvailability } from "../entry/use-tilt.js";
import { withGauge } from "../model/keep-reading.js";
import { gaugeWords } from "../words/gauge-catalogue.js";
import { GaugeChoice } from "./gauge-choice.js";
import { Cautions } from "./set-up.js";
import styles from "./set-up.module.css";
import { SideOfVehicle, StandingChoice } from "./standing-choice.js";
import { ZeroCheck } from "./zero-check.js";

export interface SetUpAgainProps {
  readonly gauging: CaseGauging;
  readonly editGauging: (change: (gauging: CaseGauging) => CaseGauging) => void;
  readonly side: VehicleSide;
  readonly onSide: (side: VehicleSide) => void;
  readonly phone: TiltAvailability;
  readonly onDone: () => void;
}

/** The set-up of a gauging that has begun: every change counts at once. */
export function SetUpAgain({ gauging, editGauging, side, onSide, phone, onDone }: SetUpAgainProps) {
  const words = useWords(gaugeWords).setUp;
  const { wheels, rideHeight } = gauging.state;
  return (
    <div className={styles.page}>
      <Card title={words.title}>
        <StandingChoice
          wheels={wheels}
          rideHeight={rideHeight}
          onChange={(nextWheels, nextHeight) =>
            editGauging((current) => ({ ...current, state: { ...current.state, wheels: nextWheels ?? wheels, rideHeight: nextHeight } }))
          }
        />
        {gauging.readings.length === 0 ? <SideOfVehicle side={side} onSide={onSide} /> : null}
        <GaugeChoice gauge={gauging.gauge} onGauge={(gauge) => editGauging((current) => withGauge(current, gauge))} phone={phone} />
        <ZeroCheck gauge={gauging.gauge} onGauge={(gauge) => editGauging((current) => withGauge(current, gauge))} />
        <Cautions />
      </Card>
      <div className={styles.start}>
        <Button kind="main" size="large" onPress={onDone}>
          {words.done}
        </Button>
      </div>
    </div>
  );
}
