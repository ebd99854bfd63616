import { analysePoses, type DrivelineAnalysis, type PosesToJudge } from "@halfturn/engine/analysis";
import { fuseGauging } from "@halfturn/engine/gauging";
import { startTransition, useEffect, useMemo, useState } from "react";
import { SETTLED_MS } from "../../../worker/draws.js";
import { judgeFully } from "../../../worker/worker-client.js";
import type { Subject } from "../../shared/subject.js";
import { movedDriveline } from "./moved-driveline.js";
import { isMoved, type Moves } from "./moves.js";

interface Rested {
  readonly of: PosesToJudge;
  readonly analysis: DrivelineAnalysis;
}

/** The result with the driveline moved by hand, the measured one while nothing is: from few draws in the frame of the move, from all of them once the hand rests. */
export function useMovedAnalysis({ input, analysis: measured }: Pick<Subject, "input" | "analysis">, moves: Moves): DrivelineAnalysis {
  const { withheld } = measured;
  const model = useMemo(() => fuseGauging(input.gauging, input.driveline), [input]);
  const moved = useMemo(() => (isMoved(moves) ? movedDriveline(input, model, withheld, moves) : null), [input, model, withheld, moves]);
  const moving = useMemo(() => moved && analysePoses(moved), [moved]);
  const [rested, setRested] = useState<Rested | null>(null);
  useEffect(() => {
    if (!moved) return;
    let wanted = true;
    const judge = () =>
      void judgeFully(moved).then((analysis) => {
        // Narrower intervals wait for a move that is made meanwhile.
        if (wanted) startTransition(() => setRested({ of: moved, analysis }));
      });
    const settled = setTimeout(judge, SETTLED_MS);
    return () => {
      wanted = false;
      clearTimeout(settled);
    };
  }, [moved]);
  if (moving === null) return measured;
  return rested?.of === moved ? rested.analysis : moving;
}
