import { type CaseGauging, latestGaugings, type VehicleSide } from "@halfturn/casefile";
import { type ReactNode, useEffect, useRef, useState } from "react";
import type { CasePageProps } from "../case-page.js";
import { gaugedSince } from "../correct/plan-ground.js";
import { tiltAvailability } from "./entry/use-tilt.js";
import styles from "./gauge-page.module.css";
import { gaugingPart } from "./model/gauging-part.js";
import { withGauging, withNewGauging } from "./model/keep-reading.js";
import { OtherGaugings } from "./other-gaugings.js";
import { ReadingDesk } from "./reading-desk.js";
import { SetUp } from "./set-up/set-up.js";
import { SetUpAgain } from "./set-up/set-up-again.js";

/** Which gauging is open, and whether one is at its readings or its set-up. */
interface Place {
  readonly driveline: number;
  /** null: a new one is being set up. */
  readonly gauging: number | null;
  readonly isSetUp: boolean;
}

/** Recording what the gauge shows, without a slip of sign, side or zero. */
export function GaugePage({ document, edit, calculation, settings }: CasePageProps) {
  const latest = latestGaugings(document);
  const latestOf = (driveline: number): Place => ({ driveline, gauging: latest[driveline]?.gauging ?? null, isSetUp: false });
  // What was made is there to be gauged again: that is what one came for.
  const [place, setPlace] = useState<Place>(() => (awaitsProof(document) ? { driveline: 0, gauging: null, isSetUp: false } : latestOf(0)));
  const [side, setSide] = useState<VehicleSide>("left");
  const phone = tiltAvailability();
  const driveline = Math.min(place.driveline, document.drivelines.length - 1);
  const id = document.drivelines[driveline]?.id;
  const index = place.gauging;
  const gauging = index === null ? undefined : document.gauging?.[index];
  const editGauging = (change: (gauging: CaseGauging) => CaseGauging): void => {
    if (index !== null) edit((current) => withGauging(current, index, change));
  };

  if (index === null || !gauging || gauging.driveline !== id) {
    return (
      <FromTop view={`new ${driveline}`}>
        <SetUp
          key={driveline}
          document={document}
          driveline={driveline}
          onDriveline={(next) => setPlace(latestOf(next))}
          phone={phone}
          onStart={(fresh, from) => {
            setSide(from);
            edit((current) => withNewGauging(current, fresh));
            setPlace({ driveline, gauging: document.gauging?.length ?? 0, isSetUp: false });
          }}
          onLeave={latest[driveline]?.gauging == null ? null : () => setPlace(latestOf(driveline))}
        />
      </FromTop>
    );
  }
  if (place.isSetUp) {
    return (
      <FromTop view={`set-up ${index}`}>
        <SetUpAgain
          gauging={gauging}
          editGauging={editGauging}
          side={side}
          onSide={setSide}
          phone={phone}
          onDone={() => setPlace({ ...place, isSetUp: false })}
        />
      </FromTop>
    );
  }
  const part = gaugingPart(document, index);
  return (
    <FromTop view={`readings ${index}`}>
      <ReadingDesk
        key={part}
        document={document}
        driveline={driveline}
        index={index}
        part={part}
        gauging={gauging}
        editGauging={editGauging}
        analysed={calculation.analysed?.find((result) => result.gauging === index) ?? null}
        busy={calculation.busy}
        settings={settings}
        startSide={side}
        onSetUp={() => setPlace({ ...place, isSetUp: true })}
      />
      <OtherGaugings
        document={document}
        driveline={driveline}
        index={index}
        onDriveline={(next) => setPlace(latestOf(next))}
        onGauging={(next) => setPlace({ driveline, gauging: next, isSetUp: false })}
      />
    </FromTop>
  );
}

const awaitsProof = (document: CasePageProps["document"]): boolean => {
  const last = document.corrections?.at(-1);
  return (
    last?.state === "made" && last.basis.some(({ driveline }) => driveline === document.drivelines[0]?.id) && !gaugedSince(document, last)
  );
};

/** What is opened anew is shown from its top. */
function FromTop({ view, children }: { readonly view: string; readonly children: ReactNode }) {
  const place = useRef<HTMLDivElement>(null);
  // biome-ignore lint/correctness/useExhaustiveDependencies: another view begins at its top, and only that
  useEffect(() => {
    place.current?.closest("main")?.scrollTo(0, 0);
  }, [view]);
  return (
    <div ref={place} className={styles.view}>
      {children}
    </div>
  );
}
