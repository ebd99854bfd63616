import type { Case } from "@halfturn/casefile";
import type { Change, Outcome, Prediction } from "@halfturn/engine/correction";
import { useEffect, useMemo, useRef, useState } from "react";
import { quickPredictions } from "../../../worker/worker-client.js";

export interface Foretold {
  readonly of: Case;
  readonly changes: readonly Change[];
  readonly outcome: Outcome<Prediction>;
}

/** What the worker foretells of the changes; the last answer stays in sight while a newer one is on its way. One question at a time: those that a slider has passed are never asked. */
export function usePrediction(document: Case, changes: readonly Change[]): Foretold | null {
  const [made, setMade] = useState<Foretold | null>(null);
  const queue = useRef<Promise<void>>(Promise.resolve());
  // What was asked beforehand is there together with the slider's new place.
  const foreseen = useMemo((): Foretold | null => {
    const outcome = quickPredictions.known({ document, changes });
    return outcome && { of: document, changes, outcome };
  }, [document, changes]);
  if (foreseen && made !== foreseen) setMade(foreseen);
  useEffect(() => {
    if (foreseen) return;
    let wanted = true;
    const ask = async (): Promise<void> => {
      if (!wanted) return;
      const outcome = await quickPredictions.ask({ document, changes });
      setMade({ of: document, changes, outcome });
    };
    queue.current = queue.current.then(ask, ask);
    return () => {
      wanted = false;
    };
  }, [document, changes, foreseen]);
  return foreseen ?? made;
}
