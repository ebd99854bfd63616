import { useEffect, useEffectEvent, useMemo, useState } from "react";
import { endNearby, type ReadingStep, takenAt } from "../model/step.js";
import { useDraft } from "./drafts.js";
import { entryActs, gaugingToBe, meantBy, type Said } from "./entry-acts.js";
import type { Standing } from "./use-standing.js";

/** Typing goes on before that, or rests. */
const RESTS_MS = 40;

/** What stands where a reading is typed, and what can be done there; only what is kept goes into the case. */
export function useEntry(standing: Standing, step: ReadingStep) {
  const { gauging, drafts, carried } = standing;
  const draft = useDraft(drafts, step.key);
  const [lastSaid, setSaid] = useState<Said | null>(null);
  const said = lastSaid?.of === draft && lastSaid.at === step.key ? lastSaid : null;
  const { changed, isFace, side, chosen } = meantBy(draft, step, standing);
  const acts = useMemo(() => entryActs(standing, step, setSaid), [standing, step]);
  const foresee = useEffectEvent(() => {
    const next = gaugingToBe(draft, step, standing);
    if (next) standing.foresee(next);
  });
  // What Enter would say is worked out before Enter comes.
  // biome-ignore lint/correctness/useExhaustiveDependencies: anew for another draft, and only then
  useEffect(() => {
    const rests = setTimeout(foresee, RESTS_MS);
    return () => clearTimeout(rests);
  }, [draft, step.key]);
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
