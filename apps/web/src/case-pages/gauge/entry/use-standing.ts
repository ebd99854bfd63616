import type { CaseDriveline, CaseGauging, VehicleSide } from "@halfturn/casefile";
import { useState } from "react";
import { notedEnd, type ShaftEnd } from "../model/ends.js";
import { noteLowerEnd } from "../model/keep-reading.js";
import { nextOpen, stepOfReading, stepsOf, WAYS, type Way } from "../model/step.js";
import { EMPTY, newDrafts } from "./drafts.js";

export interface StandingInput {
  readonly driveline: CaseDriveline;
  readonly gauging: CaseGauging;
  readonly editGauging: (change: (gauging: CaseGauging) => CaseGauging) => void;
  readonly startSide: VehicleSide;
}

/** Where one stands in the list of places: at one of them, or past the last. */
interface Place {
  readonly way: Way;
  readonly step: number | null;
}

/** Where one stands in a gauging, and the ways to another place in it. */
export function useStanding({ driveline, gauging, editGauging, startSide }: StandingInput) {
  const [place, goTo] = useState<Place>(() => ({ way: "places", step: nextOpen(stepsOf(driveline, "places", gauging), -1, gauging) }));
  const [drafts] = useState(newDrafts);
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
    editGauging,
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

export type Standing = ReturnType<typeof useStanding>;

const lastEnd = ({ readings }: CaseGauging): ShaftEnd | null =>
  readings.reduce<ShaftEnd | null>((last, reading) => notedEnd(reading) ?? last, null);

/** The side that most readings were taken from. */
function standingSide({ readings }: CaseGauging, startSide: VehicleSide): VehicleSide {
  const left = readings.filter(({ side }) => side === "left").length;
  if (left * 2 === readings.length) return startSide;
  return left * 2 > readings.length ? "left" : "right";
}
