import type { CaseDriveline, CaseGauging, CaseReading, VehicleSide } from "@halfturn/casefile";
import { useState } from "react";
import { notedEnd, type ShaftEnd } from "../model/ends.js";
import { type Doubt, doubtOf, type TypedAngle, typedAngle } from "../model/entry-text.js";
import { keepReading, noteLowerEnd, readingOf } from "../model/keep-reading.js";
import { displayed } from "../model/phone-tilt.js";
import { endNearby, nextOpen, stepOfReading, stepsOf, takenAt, WAYS, type Way } from "../model/step.js";

export type EntryFault = Exclude<TypedAngle, { readonly ok: true }>["fault"] | "lower-end" | "lean";

/** What stands on the page for one step before it is kept. It stays there when one looks at another place meanwhile. */
interface Draft {
  readonly text: string;
  readonly chosen: ShaftEnd | null;
  readonly isFace: boolean | null;
  readonly side: VehicleSide | null;
  /** The reading that is taken again. */
  readonly changing: number | null;
}

const EMPTY: Draft = { text: "", chosen: null, isFace: null, side: null, changing: null };

export interface EntryInput {
  readonly driveline: CaseDriveline;
  readonly gauging: CaseGauging;
  readonly editGauging: (change: (gauging: CaseGauging) => CaseGauging) => void;
  readonly startSide: VehicleSide;
}

/** A number that is asked about before it is kept. */
interface Question {
  readonly doubt: Doubt;
  readonly deg: number;
}

/** Where one stands in the list of places: at one of them, or past the last. */
export interface Standing {
  readonly way: Way;
  readonly step: number | null;
}

/** Everything that happens while readings are typed; only what is kept goes into the case. */
export function useEntry({ driveline, gauging, editGauging, startSide }: EntryInput) {
  const [standing, setStanding] = useState<Standing>(() => ({
    way: "places",
    step: nextOpen(stepsOf(driveline, "places", gauging), -1, gauging),
  }));
  const [drafts, setDrafts] = useState<Readonly<Record<string, Draft>>>({});
  const [carried, setCarried] = useState<ShaftEnd | null>(() => lastEnd(gauging));
  const [fault, setFault] = useState<EntryFault | null>(null);
  const [question, setQuestion] = useState<Question | null>(null);

  const steps = stepsOf(driveline, standing.way, gauging);
  const step = standing.step === null ? null : (steps[Math.min(standing.step, steps.length - 1)] ?? null);
  const draft = (step && drafts[step.key]) ?? EMPTY;
  const changed: CaseReading | null = draft.changing === null ? null : (gauging.readings[draft.changing] ?? null);
  const isFace = step?.kind === "place" && (draft.isFace ?? (changed ? "face" in changed : usuallyFace(step.at, gauging)));
  const side = draft.side ?? changed?.side ?? standingSide(gauging, startSide);
  const chosen = draft.chosen ?? (changed && notedEnd(changed)) ?? (step && endNearby(step, gauging)) ?? carried;

  const setDraft = (change: Partial<Draft>): void => {
    if (!step) return;
    setFault(null);
    setQuestion(null);
    setDrafts({ ...drafts, [step.key]: { ...draft, ...change } });
  };

  const goTo = (next: Standing): void => {
    setFault(null);
    setQuestion(null);
    setStanding(next);
  };

  const keepAs = (deg: number, end: ShaftEnd | null, asFace: boolean) => {
    if (!step || step.kind === "tape") return;
    const noted = end ?? chosen;
    if (deg > 0 && noted === null) return setFault(asFace ? "lean" : "lower-end");
    const reading = readingOf(step, { deg, lower: noted, side, isFace: asFace }, changed);
    const replaces = changed ? draft.changing : null;
    editGauging((current) => keepReading(current, reading, replaces));
    const { [step.key]: _, ...others } = drafts;
    setDrafts(others);
    if (noted !== null) setCarried(noted);
    const after = keepReading(gauging, reading, replaces);
    goTo({ way: standing.way, step: nextOpen(stepsOf(driveline, standing.way, after), standing.step ?? 0, after) });
  };

  /** Keeps what stands there, with the lower end as given or as chosen; asks where something is missing. */
  const keep = (end: ShaftEnd | null = null) => {
    if (!step || step.kind === "tape") return;
    const typed: TypedAngle = draft.text.trim() === "" && changed ? { ok: true, deg: changed.deg } : typedAngle(draft.text);
    if (end !== null && draft.text.trim() !== "") setDraft({ chosen: end });
    if (!typed.ok) return setFault(typed.fault);
    const doubt = doubtOf(typed.deg);
    if (doubt === "steep" || (doubt === "upright" && step.kind === "place")) return setQuestion({ doubt, deg: typed.deg });
    if (typed.deg >= 90) return setFault("too-steep");
    keepAs(typed.deg, end, isFace);
  };

  /** Chooses the lower end; where a number stands already, that says all there is to say, and it is kept. */
  const pressEnd = (end: ShaftEnd): void => {
    if (draft.text.trim() !== "") keep(end);
    else setDraft({ chosen: end });
  };

  /** Takes a reading again in its place. */
  const change = (index: number): void => {
    const place = stepOfReading(driveline, gauging, index);
    const at = place && stepsOf(driveline, place.way, gauging)[place.step];
    if (!place || !at) return;
    goTo(place);
    setDrafts({ ...drafts, [at.key]: { ...EMPTY, changing: index } });
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

  return {
    standing,
    steps,
    step,
    text: draft.text,
    chosen,
    isFace,
    side,
    standingSide: standingSide(gauging, startSide),
    changing: changed,
    changingIndex: changed ? draft.changing : null,
    taken: step ? takenAt(step, gauging) : [],
    fault,
    question,
    isCarried: chosen !== null && chosen === carried && draft.chosen === null && !changed && !(step && endNearby(step, gauging)),
    setText: (text: string) => setDraft({ text }),
    choose: (end: ShaftEnd) => setDraft({ chosen: end }),
    setFace: (face: boolean) => setDraft({ isFace: face }),
    setSide: (from: VehicleSide) => setDraft({ side: from }),
    /** The answer to the question about a number. */
    answer: (deg: number, asFace: boolean) => keepAs(deg, draft.chosen, asFace),
    /** What the phone measured itself: its step is a tenth of a degree. */
    keepMeasured: (slopeDeg: number, end: ShaftEnd) => keepAs(displayed(slopeDeg), end, isFace),
    typeAgain: () => setDraft({ text: "" }),
    keep,
    pressEnd,
    change,
    answerLowerEnd,
    goTo,
    goToKey,
  };
}

export type Entry = ReturnType<typeof useEntry>;

const lastEnd = ({ readings }: CaseGauging): ShaftEnd | null =>
  readings.reduce<ShaftEnd | null>((last, reading) => notedEnd(reading) ?? last, null);

/** Source and pinion are usually read across a machined face, a section along its tube; a reading that stands there already says it. */
function usuallyFace(at: string, { readings }: CaseGauging): boolean {
  const there = readings.findLast((reading) => "at" in reading && reading.at === at);
  return there ? "face" in there : at === "source" || at === "driven";
}

/** The side that most readings were taken from. */
function standingSide({ readings }: CaseGauging, startSide: VehicleSide): VehicleSide {
  const left = readings.filter(({ side }) => side === "left").length;
  if (left * 2 === readings.length) return startSide;
  return left * 2 > readings.length ? "left" : "right";
}
