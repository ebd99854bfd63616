import type { CaseDriveline, CaseGauging, VehicleSide } from "@halfturn/casefile";
import { useState } from "react";
import { useDraftsOf } from "../../../device/kept-draft.js";
import { notedEnd, type ShaftEnd } from "../model/ends.js";
import { noteLowerEnd } from "../model/keep-reading.js";
import { nextOpen, stepOfReading, stepsOf, takenAt, WAYS, type Way } from "../model/step.js";
import { type Drafts, EMPTY, newDrafts } from "./drafts.js";

export interface StandingInput {
  readonly driveline: CaseDriveline;
  readonly gauging: CaseGauging;
  /** The place of what is half typed for this gauging. */
  readonly part: string;
  readonly editGauging: (change: (gauging: CaseGauging) => CaseGauging) => void;
  /** Told of what the gauging will say once the next key is pressed. */
  readonly foresee: (gauging: CaseGauging) => void;
  readonly startSide: VehicleSide;
}

/** Where one stands in the list of places: at one of them, or past the last. */
interface Place {
  readonly way: Way;
  readonly step: number | null;
}

/** Where one stands in a gauging, and the ways to another place in it. */
export function useStanding({ driveline, gauging, part, editGauging, foresee, startSide }: StandingInput) {
  const kept = useDraftsOf(part);
  const [drafts] = useState(() =>
    newDrafts(kept, (key, draft) => draft.changing === null || isTakenAt(driveline, gauging, key, draft.changing)),
  );
  const [place, goTo] = useState<Place>(() => firstPlace(driveline, gauging, drafts));
  const [carried, setCarried] = useState<ShaftEnd | null>(() => lastEnd(gauging));
  const steps = stepsOf(driveline, place.way, gauging);

  /** Takes a reading again in its place. */
  const change = (index: number): void => {
    const found = stepOfReading(driveline, gauging, index);
    const at = found && stepsOf(driveline, found.way, gauging)[found.step];
    if (!found || !at) return;
    goTo(found);
    drafts.put(at.key, { ...EMPTY, changing: index });
  };

  /** Which end of a shaft is lower, as somebody saw who looked again; it also holds for what comes next. */
  const answerLowerEnd = (shaft: string, end: ShaftEnd): void => {
    editGauging((current) => noteLowerEnd(current, shaft, end));
    setCarried(end);
  };

  const goToKey = (key: string) => {
    for (const way of WAYS) {
      const at = stepsOf(driveline, way, gauging).findIndex((candidate) => candidate.key === key);
      if (at >= 0) return goTo({ way, step: at });
    }
  };

  /** On to the next place where nothing was taken, once something was kept here. */
  const goOn = (after: CaseGauging): void =>
    goTo({ way: place.way, step: nextOpen(stepsOf(driveline, place.way, after), place.step ?? 0, after) });

  return {
    driveline,
    gauging,
    part,
    editGauging,
    foresee,
    drafts,
    place,
    steps,
    step: place.step === null ? null : (steps[Math.min(place.step, steps.length - 1)] ?? null),
    /** The lower end that was last seen: likely that of the next shaft too. */
    carried,
    carry: setCarried,
    side: standingSide(gauging, startSide),
    change,
    answerLowerEnd,
    goTo,
    goToKey,
    goOn,
  };
}

/** Whether a reading is one of a step: another device may have taken some out. */
const isTakenAt = (driveline: CaseDriveline, gauging: CaseGauging, key: string, reading: number): boolean =>
  WAYS.some((way) => stepsOf(driveline, way, gauging).some((step) => step.key === key && takenAt(step, gauging).includes(reading)));

/** Where something is half typed; else the first place where nothing was taken. */
function firstPlace(driveline: CaseDriveline, gauging: CaseGauging, drafts: Drafts): Place {
  for (const way of WAYS) {
    const begun = stepsOf(driveline, way, gauging).findIndex(({ key }) => drafts.of(key).text.trim() !== "");
    if (begun >= 0) return { way, step: begun };
  }
  return { way: "places", step: nextOpen(stepsOf(driveline, "places", gauging), -1, gauging) };
}

export type Standing = ReturnType<typeof useStanding>;

const lastEnd = ({ readings }: CaseGauging): ShaftEnd | null =>
  readings.reduce<ShaftEnd | null>((last, reading) => notedEnd(reading) ?? last, null);

/** The side that most readings were taken from. */
function standingSide({ readings }: CaseGauging, startSide: VehicleSide): VehicleSide {
  const left = readings.filter(({ side }) => side === "left").length;
  if (left * 2 === readings.length) return startSide;
  return left * 2 > readings.length ? "left" : "right";
}
