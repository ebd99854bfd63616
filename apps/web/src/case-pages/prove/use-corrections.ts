import type { Case } from "@halfturn/casefile";
import type { ReportedCorrection } from "@halfturn/report/browser";
import { useEffect, useState } from "react";
import { correctionsOf } from "../../worker/worker-client.js";

export interface ProvedCorrections {
  /** null until the first answer. */
  readonly corrections: readonly ReportedCorrection[] | null;
  /** The case that they are of: names have to be taken from that one. */
  readonly of: Case;
  readonly failed: boolean;
}

/** The corrections of the case with the results on both sides, from the worker; those of the case a moment ago while it is busy. */
export function useCorrections(document: Case): ProvedCorrections {
  const [made, setMade] = useState<ProvedCorrections>({ corrections: null, of: document, failed: false });
  useEffect(() => {
    let wanted = true;
    correctionsOf(document).then(
      (corrections) => {
        if (wanted) setMade({ corrections, of: document, failed: false });
      },
      () => {
        if (wanted) setMade((before) => ({ ...before, failed: true }));
      },
    );
    return () => {
      wanted = false;
    };
  }, [document]);
  return made;
}
