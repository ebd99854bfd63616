import type { Step } from "./labels.js";

/** Every caution, and the step it stands beside. */
export const CAUTION_STEPS = {
  "driver-never-operates": "record",
  "within-vehicle-limits": "record",
  "some-wheels-raised": "record",
  "open-differential": "record",
  "stability-control": "record",
  "nobody-near-turning-shaft": "record",
  "loose-items-at-speed": "isolate",
  "shaft-off-may-roll": "isolate",
  "supported-vehicle": "gauge",
  "turning-by-hand": "gauge",
  "hot-exhaust": "gauge",
  "too-little-to-conclude": "explain",
  "before-disconnecting": "correct",
  "mark-before-apart": "correct",
  "brake-and-steering-lines": "correct",
  "prove-from-slow": "prove",
} as const satisfies Readonly<Record<string, Step>>;

export type CautionId = keyof typeof CAUTION_STEPS;

export interface Cautions {
  readonly texts: { readonly [Id in CautionId]: string };
  /** Stands once beside any group of cautions. */
  readonly defersTo: string;
}

/** The cautions of one step, in the order in which they are to be read. */
export const cautionsOf = (cautions: Cautions, step: Step): readonly string[] =>
  (Object.keys(CAUTION_STEPS) as CautionId[]).filter((id) => CAUTION_STEPS[id] === step).map((id) => cautions.texts[id]);
