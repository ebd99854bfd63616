import type { AnalysedDriveline, Case } from "@halfturn/casefile";
import { startTransition, useEffect, useState } from "react";
import type { Calculation } from "../case-pages/case-page.js";
import type { OpenCase } from "../device/open-case.js";
import { FULL_DRAWS, SETTLED_MS } from "./draws.js";
import { analyseFully, quickAnalyses } from "./worker-client.js";

interface Made {
  readonly of: Case;
  readonly full: boolean;
  readonly analysed: readonly AnalysedDriveline[];
}

/** What the worker makes of a document: a quick answer at once, the full one when the typing rests. An answer to an older document never replaces a newer one. */
export function useCalculation(open: OpenCase, document: Case): Calculation {
  // The worker begins before the page is drawn anew, and works while it is.
  useEffect(() => open.subscribe(() => void quickAnalyses.ask(open.record().document)), [open]);
  const [made, setMade] = useState<Made | null>(null);
  useEffect(() => {
    let wanted = true;
    const keep = (full: boolean, analysed: readonly AnalysedDriveline[]): void => {
      if (wanted) setMade((before) => (before?.of === document && !full ? before : { of: document, full, analysed }));
    };
    void quickAnalyses.ask(document).then((analysed) => keep(false, analysed));
    const settled = setTimeout(async () => {
      const analysed = await analyseFully(document, FULL_DRAWS);
      // Narrower intervals wait for a key that is pressed meanwhile.
      startTransition(() => keep(true, analysed));
    }, SETTLED_MS);
    return () => {
      wanted = false;
      clearTimeout(settled);
    };
  }, [document]);
  // What was worked out beforehand is drawn together with what it is the answer to.
  const foreseen = made?.of === document ? null : quickAnalyses.known(document);
  if (foreseen) setMade({ of: document, full: false, analysed: foreseen });
  return { analysed: foreseen ?? made?.analysed ?? null, busy: made?.of !== document || !made.full };
}
