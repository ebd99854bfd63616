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

  const keepAs = (deg: number, end: ShaftEnd | null, asFace: boolean) => {
    const now = drafts.of(step.key);
    const { lower, reading, replaces } = readingFrom(now, step, standing, { deg, end, asFace });
    if (deg > 0 && lower === null) return say({ fault: asFace ? "lean" : "lower-end" });
    editGauging((current) => keepReading(current, reading, replaces));
    drafts.put(step.key, null);
    if (lower !== null) standing.carry(lower);
    standing.goOn(keepReading(gauging, reading, replaces));
  };

  /** Keeps what stands there, with the lower end as given or as chosen; asks where something is missing. */
  const keep = (end: ShaftEnd | null = null) => {
    const now = drafts.of(step.key);
    const meant = meantBy(now, step, standing);
    if (end !== null && now.text.trim() !== "") set({ chosen: end });
    const typed = typedIn(now, meant.changed);
    if (!typed.ok) return say({ fault: typed.fault });
    const doubt = doubtOf(typed.deg);
    if (isAskedAbout(doubt, step)) return say({ question: { doubt, deg: typed.deg } });
    if (typed.deg >= 90) return say({ fault: "too-steep" });
    keepAs(typed.deg, end, meant.isFace);
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
    answer: (deg: number, asFace: boolean) => keepAs(deg, drafts.of(step.key).chosen, asFace),
    /** What the phone measured itself: its step is a tenth of a degree. */
    keepMeasured: (slopeDeg: number, end: ShaftEnd) =>
      keepAs(displayed(slopeDeg), end, meantBy(drafts.of(step.key), step, standing).isFace),
    typeAgain: () => void set({ text: "" }),
    keep,
    pressEnd,
  };
}

/** What the gauging says once Enter is pressed on a draft; null where that would ask for something first. */
export function gaugingToBe(draft: Draft, step: ReadingStep, standing: Standing): CaseGauging | null {
  const { changed, isFace } = meantBy(draft, step, standing);
  const typed = typedIn(draft, changed);
  if (draft.text.trim() === "" || !typed.ok || typed.deg >= 90 || isAskedAbout(doubtOf(typed.deg), step)) return null;
  const { lower, reading, replaces } = readingFrom(draft, step, standing, { deg: typed.deg, end: null, asFace: isFace });
  return typed.deg > 0 && lower === null ? null : keepReading(standing.gauging, reading, replaces);
}

/** The number that stands there; where nothing does, that of the reading which is changed. */
const typedIn = ({ text }: Draft, changed: CaseReading | null): TypedAngle =>
  text.trim() === "" && changed ? { ok: true, deg: changed.deg } : typedAngle(text);

const isAskedAbout = (doubt: Doubt | null, { kind }: ReadingStep): doubt is Doubt =>
  doubt === "steep" || (doubt === "upright" && kind === "place");

interface Kept {
  readonly deg: number;
  /** The lower end as it was given with the number, null where the draft says it. */
  readonly end: ShaftEnd | null;
  readonly asFace: boolean;
}

function readingFrom(draft: Draft, step: ReadingStep, standing: Standing, { deg, end, asFace }: Kept) {
  const { chosen, changed, side } = meantBy(draft, step, standing);
  const lower = end ?? chosen;
  const reading = readingOf(step, { deg, lower, side, isFace: asFace }, changed);
  return { lower, reading, replaces: changed ? draft.changing : null };
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
