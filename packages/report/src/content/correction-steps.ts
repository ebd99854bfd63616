import type { CaseCorrection } from "@halfturn/casefile";
import { INSTRUCTION_CODES } from "@halfturn/engine/correction";
import type { FindingParams } from "@halfturn/engine/findings";
import { CAUTION_STEPS, type CautionId } from "@halfturn/words";
import type { Block, Step } from "./blocks.js";
import type { CorrectionSubject } from "./correction-subject.js";

type RecordedStep = NonNullable<CaseCorrection["instructions"]>[number];

/** A record may come from anywhere: only what a sentence can be made of is let through. */
function sayable(params: RecordedStep["params"]): FindingParams {
  const known = Object.entries(params).filter(
    ([, value]) =>
      ["number", "string", "boolean"].includes(typeof value) || (Array.isArray(value) && value.every((item) => typeof item === "string")),
  );
  return Object.fromEntries(known) as FindingParams;
}

const isCaution = (id: string): id is CautionId => Object.hasOwn(CAUTION_STEPS, id);

function stepOf({ text, catalogue, words }: CorrectionSubject, { code, params, cautions = [] }: RecordedStep): Step {
  // A price in a limit that nobody knows cannot be said either.
  const sound = code !== "trade-off" || Object.hasOwn(catalogue.correction.limits, String(params.limit));
  const known = sound ? INSTRUCTION_CODES.find((one) => one === code) : undefined;
  return {
    text: known ? text.instruction({ code: known, params: sayable(params) }) : words.correct.unknownStep(code),
    cautions: cautions.filter(isCaution).map((id) => catalogue.cautions.texts[id]),
  };
}

/** The work in its order, each caution beside the step that needs it. Fasteners and torques are the maker's, whatever stands on record. */
export function stepBlocks(subject: CorrectionSubject): readonly Block[] {
  const { record, catalogue, words } = subject;
  const steps = record.instructions ?? [];
  const always = (["replace-single-use-fasteners", "tighten-to-maker"] as const)
    .filter(() => record.changes.length > 0)
    .filter((code) => !steps.some((step) => step.code === code))
    .map((code) => ({ code, params: {} }));
  const items = [...steps, ...always].map((step) => stepOf(subject, step));
  return [
    ...(steps.length === 0 && record.changes.length > 0 ? [{ kind: "paragraph" as const, text: words.correct.noSteps }] : []),
    ...(items.length === 0 ? [] : [{ kind: "steps" as const, title: words.correct.steps, cautionLabel: words.correct.caution, items }]),
    { kind: "paragraph", text: catalogue.cautions.defersTo },
  ];
}
