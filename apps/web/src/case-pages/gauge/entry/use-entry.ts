import { useMemo, useState } from "react";
import { endNearby, type ReadingStep, takenAt } from "../model/step.js";
import { useDraft } from "./drafts.js";
import { entryActs, meantBy, type Said } from "./entry-acts.js";
import type { Standing } from "./use-standing.js";

/** What stands where a reading is typed, and what can be done there; only what is kept goes into the case. */
export function useEntry(standing: Standing, step: ReadingStep) {
  const { gauging, drafts, carried } = standing;
  const draft = useDraft(drafts, step.key);
  const [lastSaid, setSaid] = useState<Said | null>(null);
  const said = lastSaid?.of === draft && lastSaid.at === step.key ? lastSaid : null;
  const { changed, isFace, side, chosen } = meantBy(draft, step, standing);
  const acts = useMemo(() => entryActs(standing, step, setSaid), [standing, step]);
  return {
    ...acts,
    step,
    text: draft.text,
    chosen,
    isFace,
    side,
    standingSide: standing.side,
    changing: changed,
    changingIndex: changed ? draft.changing : null,
    taken: takenAt(step, gauging),
    fault: said?.fault ?? null,
    question: said?.question ?? null,
    isCarried: chosen !== null && chosen === carried && draft.chosen === null && !changed && !endNearby(step, gauging),
  };
}

export type Entry = ReturnType<typeof useEntry>;
