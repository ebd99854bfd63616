import type { Case } from "@halfturn/casefile";
import type { Change } from "@halfturn/engine/correction";
import { useEffect } from "react";
import { quickPredictions } from "../../../worker/worker-client.js";
import { type Stops, stepsFrom } from "./stops.js";

/** A hand that moves a slider goes on before that, or rests. */
const RESTS_MS = 150;

/** Works out, one by one, what one step of each slider would do, so that the step shows it at once. `rests`: nothing else is being worked out. */
export function useForesight(document: Case, changes: readonly Change[], stops: readonly Stops[], rests: boolean): void {
  useEffect(() => {
    if (!rests) return;
    let wanted = true;
    const settled = setTimeout(async () => {
      for (const step of stepsFrom(changes, stops)) {
        if (!wanted) return;
        await quickPredictions.ask({ document, changes: step });
      }
    }, RESTS_MS);
    return () => {
      wanted = false;
      clearTimeout(settled);
    };
  }, [document, changes, stops, rests]);
}
