import type { CaseGauging, CaseReading, VehicleSide } from "@halfturn/casefile";
import { afterKey, type PadKey } from "../../../controls/pad-text.js";
import { notedEnd, type ShaftEnd } from "../model/ends.js";
import { type Doubt, doubtOf, type TypedAngle, typedAngle } from "../model/entry-text.js";
import { keepReading, readingOf } from "../model/keep-reading.js";
import { displayed } from "../model/phone-tilt.js";
import { endNearby, type ReadingStep } from "../model/step.js";
import type { Draft } from "./drafts.js";
import type { Standing } from "./use-standing.js";

export type EntryFault = Exclude<TypedAngle, { readonly ok: true }>["fault"] | "lower-end" | "lean";

/** What was said of a draft; it holds until another one stands there. */
export interface Said {
  readonly of: Draft;
  readonly at: string;
  readonly fault: EntryFault | null;
  /** A number that is asked about before it is kept. */
  readonly question: { readonly doubt: Doubt; readonly deg: number } | null;
}

/** What can be done where a reading is typed. It acts on the draft that stands there when it is done, so that what offers it need not be drawn again for each digit. */
export function entryActs(standing: Standing, step: ReadingStep, setSaid: (said: Said) => void) {
  const { gauging, editGauging, drafts } = standing;
  const set = (change: Partial<Draft>): Draft => {
    const next = { ...drafts.of(step.key), ...change };
    drafts.put(step.key, next);
    return next;
  };
  const say = (what: Partial<Pick<Said, "fault" | "question">>): void =>
    setSaid({ of: drafts.of(step.key), at: step.key, fault: null, question: null, ...what });

  const act = (decision: Decision): void => {
    if (!("reading" in decision)) {
      say(decision);
      return;
    }
    const { lower, reading, replaces } = decision;
    editGauging((current) => keepReading(current, reading, replaces));
    drafts.put(step.key, null);
    if (lower !== null) standing.carry(lower);
    standing.goOn(keepReading(gauging, reading, replaces));
  };
  const keepAs = (taken: Taken): void => act(takenAs(drafts.of(step.key), step, standing, taken));

  /** Keeps what stands there, with the lower end as given or as chosen; asks where something is missing. */
  const keep = (end: ShaftEnd | null = null) => {
    const now = drafts.of(step.key);
    act(decisionOn(end !== null && now.text.trim() !== "" ? set({ chosen: end }) : now, step, standing, end));
  };

  /** Chooses the lower end; where a number stands already, that says all there is to say, and it is kept. */
  const pressEnd = (end: ShaftEnd): void => {
    if (drafts.of(step.key).text.trim() !== "") keep(end);
    else set({ chosen: end });
  };

  return {
    setText: (text: string) => void set({ text }),
    pressKey: (key: PadKey, decimalSign: "." | ",") => void set({ text: afterKey(drafts.of(step.key).text, key, decimalSign) }),
    choose: (end: ShaftEnd) => void set({ chosen: end }),
    setFace: (face: boolean) => void set({ isFace: face }),
    setSide: (from: VehicleSide) => void set({ side: from }),
    /** The answer to the question about a number. */
    answer: (deg: number, asFace: boolean) => keepAs({ deg, end: drafts.of(step.key).chosen, asFace }),
    /** What the phone measured itself: its step is a tenth of a degree. */
    keepMeasured: (slopeDeg: number, end: ShaftEnd) =>
      keepAs({ deg: displayed(slopeDeg), end, asFace: meantBy(drafts.of(step.key), step, standing).isFace }),
    typeAgain: () => void set({ text: "" }),
    keep,
    pressEnd,
  };
}

/** What the gauging says once Enter is pressed on a draft; null where nothing is typed, or Enter would ask for something first. */
export function gaugingToBe(draft: Draft, step: ReadingStep, standing: Standing): CaseGauging | null {
  const decision = draft.text.trim() === "" ? null : decisionOn(draft, step, standing, null);
  return decision && "reading" in decision ? keepReading(standing.gauging, decision.reading, decision.replaces) : null;
}

/** What becomes of a draft: a reading that is kept, or something that is said of it first. */
type Decision =
  | { readonly reading: CaseReading; readonly replaces: number | null; readonly lower: ShaftEnd | null }
  | { readonly fault: EntryFault }
  | { readonly question: NonNullable<Said["question"]> };

interface Taken {
  readonly deg: number;
  /** The lower end as it was given with the number, null where the draft says it. */
  readonly end: ShaftEnd | null;
  readonly asFace: boolean;
}

function decisionOn(draft: Draft, step: ReadingStep, standing: Standing, end: ShaftEnd | null): Decision {
  const { changed, isFace } = meantBy(draft, step, standing);
  // Where nothing is typed, the number of the reading that is changed stands.
  const typed: TypedAngle = draft.text.trim() === "" && changed ? { ok: true, deg: changed.deg } : typedAngle(draft.text);
  if (!typed.ok) return { fault: typed.fault };
  const { deg } = typed;
  const doubt = doubtOf(deg);
  if (doubt === "steep" || (doubt === "upright" && step.kind === "place")) return { question: { doubt, deg } };
  return deg >= 90 ? { fault: "too-steep" } : takenAs(draft, step, standing, { deg, end, asFace: isFace });
}

function takenAs(draft: Draft, step: ReadingStep, standing: Standing, { deg, end, asFace }: Taken): Decision {
  const { chosen, changed, side } = meantBy(draft, step, standing);
  const lower = end ?? chosen;
  if (deg > 0 && lower === null) return { fault: asFace ? "lean" : "lower-end" };
  return { lower, reading: readingOf(step, { deg, lower, side, isFace: asFace }, changed), replaces: changed ? draft.changing : null };
}

/** What a draft says together with what was read before. */
export function meantBy(draft: Draft, step: ReadingStep, { gauging, side, carried }: Standing) {
  const changed: CaseReading | null = draft.changing === null ? null : (gauging.readings[draft.changing] ?? null);
  return {
    changed,
    isFace: step.kind === "place" && (draft.isFace ?? (changed ? "face" in changed : usuallyFace(step.at, gauging))),
    side: draft.side ?? changed?.side ?? side,
    chosen: draft.chosen ?? (changed && notedEnd(changed)) ?? endNearby(step, gauging) ?? carried,
  };
}

/** Source and pinion are usually read across a machined face, a section along its tube; a reading that stands there already says it. */
function usuallyFace(at: string, { readings }: CaseGauging): boolean {
  const there = readings.findLast((reading) => "at" in reading && reading.at === at);
  return there ? "face" in there : at === "source" || at === "driven";
}
