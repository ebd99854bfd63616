import type { Case } from "@halfturn/casefile";
import { AXLE_KINDS, type Outcome, type PlanResult } from "@halfturn/engine/correction";
import { useCallback, useEffect, useEffectEvent, useRef, useState } from "react";
import { planCase } from "../../worker/worker-client.js";
import { groundOf } from "./plan-ground.js";

export interface PlanWish {
  readonly maxChanges: number;
  readonly leaveAxle: boolean;
}

/** `answer` stays in sight while a newer one is worked out; it is of the document as it stands only where `fresh`. */
export interface PlanSearch {
  readonly state: "working" | "done" | "stopped" | "failed";
  readonly share: number;
  readonly answer: Outcome<PlanResult> | null;
  readonly fresh: boolean;
  readonly stop: () => void;
  readonly again: () => void;
}

/** Typing a stock size asks for no plan at every key. */
const SETTLED_MS = 400;

/** Kept between visits to the page, so that going to look at something else costs no new search. */
let kept: { readonly key: string; readonly answer: Outcome<PlanResult> } | null = null;

/** The best corrections of the case from its stock, searched anew whenever something they rest on changes. */
export function usePlan(document: Case, { maxChanges, leaveAxle }: PlanWish): PlanSearch {
  const key = `${maxChanges} ${leaveAxle} ${groundOf(document)}`;
  const [made, setMade] = useState(kept);
  const [state, setState] = useState<PlanSearch["state"]>("working");
  const [share, setShare] = useState(0);
  const [round, setRound] = useState(0);
  const stopping = useRef<AbortController | null>(null);

  const search = useEffectEvent((signal: AbortSignal) =>
    planCase(document, { maxChanges, keep: leaveAxle ? AXLE_KINDS : [] }, { onProgress: setShare, signal }),
  );
  // biome-ignore lint/correctness/useExhaustiveDependencies: a round asks for the same search once more
  useEffect(() => {
    if (kept?.key === key) {
      setMade(kept);
      setState("done");
      return;
    }
    const work = new AbortController();
    stopping.current = work;
    setState("working");
    setShare(0);
    const settled = setTimeout(() => {
      search(work.signal).then(
        (answer) => {
          if (work.signal.aborted) return;
          kept = { key, answer };
          setMade(kept);
          setState("done");
        },
        () => {
          if (stopping.current === work) setState(work.signal.aborted ? "stopped" : "failed");
        },
      );
    }, SETTLED_MS);
    return () => {
      stopping.current = null;
      clearTimeout(settled);
      work.abort();
    };
  }, [key, round]);

  const stop = useCallback(() => {
    stopping.current?.abort();
    setState("stopped");
  }, []);
  const again = useCallback(() => setRound((before) => before + 1), []);
  return { state, share, answer: made?.answer ?? null, fresh: made?.key === key, stop, again };
}
