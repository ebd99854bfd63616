import { type CaseGauging, latestGaugings, type VehicleSide } from "@halfturn/casefile";
import { catalogueOf, drivelineName } from "@halfturn/words";
import { useState } from "react";
import { Button } from "../../controls/button.js";
import { Choice } from "../../controls/choice.js";
import { useLanguage, useWords } from "../../words/use-words.js";
import type { CasePageProps } from "../case-page.js";
import { tiltAvailability } from "./entry/use-tilt.js";
import styles from "./gauge-page.module.css";
import { withGauging, withNewGauging } from "./model/keep-reading.js";
import { ReadingDesk } from "./reading-desk.js";
import { SetUp } from "./set-up/set-up.js";
import { SetUpAgain } from "./set-up/set-up-again.js";
import { gaugeWords } from "./words/gauge-catalogue.js";

/** Which gauging is open, and whether one is at its readings or its set-up. */
interface Place {
  readonly driveline: number;
  /** null: a new one is being set up. */
  readonly gauging: number | null;
  readonly isSetUp: boolean;
}

/** Recording what the gauge shows, without a slip of sign, side or zero. */
export function GaugePage({ document, edit, calculation, settings }: CasePageProps) {
  const words = useWords(gaugeWords);
  const catalogue = catalogueOf(useLanguage());
  const latest = latestGaugings(document);
  const latestOf = (driveline: number): Place => ({ driveline, gauging: latest[driveline]?.gauging ?? null, isSetUp: false });
  const [place, setPlace] = useState<Place>(() => latestOf(0));
  const [side, setSide] = useState<VehicleSide>("left");
  const hasPhone = tiltAvailability() === "here";

  const driveline = Math.min(place.driveline, document.drivelines.length - 1);
  const id = document.drivelines[driveline]?.id;
  const gauging = place.gauging === null ? undefined : document.gauging?.[place.gauging];
  if (place.gauging === null || !gauging || gauging.driveline !== id) {
    return (
      <SetUp
        key={driveline}
        document={document}
        driveline={driveline}
        onDriveline={(next) => setPlace(latestOf(next))}
        hasPhone={hasPhone}
        onStart={(fresh, from) => {
          setSide(from);
          edit((current) => withNewGauging(current, fresh));
          setPlace({ driveline, gauging: document.gauging?.length ?? 0, isSetUp: false });
        }}
      />
    );
  }
  const index = place.gauging;
  const editGauging = (change: (gauging: CaseGauging) => CaseGauging): void => edit((current) => withGauging(current, index, change));
  if (place.isSetUp) {
    return (
      <SetUpAgain
        gauging={gauging}
        editGauging={editGauging}
        side={side}
        onSide={setSide}
        hasPhone={hasPhone}
        onDone={() => setPlace({ ...place, isSetUp: false })}
      />
    );
  }
  const analysed = calculation.analysed?.find((result) => result.gauging === index) ?? null;
  const own = (document.gauging ?? []).flatMap((other, k) => (other.driveline === id ? [{ other, k }] : []));
  return (
    <>
      <ReadingDesk
        key={index}
        document={document}
        driveline={driveline}
        index={index}
        gauging={gauging}
        editGauging={editGauging}
        analysed={analysed}
        busy={calculation.busy}
        settings={settings}
        startSide={side}
        onSetUp={() => setPlace({ ...place, isSetUp: true })}
      />
      <section className={styles.others}>
        {latest[driveline]?.gauging === index ? null : <p>{words.setUp.older}</p>}
        {document.drivelines.length > 1 ? (
          <Choice
            label={words.setUp.driveline}
            value={String(driveline)}
            options={document.drivelines.map((_, k) => ({ value: String(k), label: drivelineName(document, k, catalogue) }))}
            onChange={(value) => setPlace(latestOf(Number(value)))}
          />
        ) : null}
        {own.length > 1 ? (
          <Choice
            label={words.setUp.gaugings}
            value={String(index)}
            options={own.map(({ other, k }) => ({
              value: String(k),
              label: words.setUp.gaugingName(catalogue.labels.stages[other.stage], other.readings.length),
            }))}
            onChange={(value) => setPlace({ driveline, gauging: Number(value), isSetUp: false })}
          />
        ) : null}
        <Button onPress={() => setPlace({ driveline, gauging: null, isSetUp: true })}>{words.setUp.newGauging}</Button>
      </section>
    </>
  );
}
