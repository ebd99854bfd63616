import type { Case } from "@halfturn/casefile";
import type { Language, Units } from "@halfturn/words";
import { useEffect, useState } from "react";
import { VERSION } from "../../version.js";
import type { MadeReport } from "../../worker/report-calculations.js";
import { reportCase } from "../../worker/worker-client.js";
import { useNarrow } from "./use-narrow.js";

/** The narrowest that figures are drawn: what a phone has between its edges. */
const NARROW_FIGURE = 320;

export interface ReportState {
  /** null until the first answer; of the case a moment ago while the worker is busy. */
  readonly report: MadeReport | null;
  readonly failed: boolean;
}

/** The report of the case as it stands today, from the worker. */
export function useReport(document: Case, language: Language, units: Units): ReportState {
  const narrow = useNarrow();
  const [state, setState] = useState<ReportState>({ report: null, failed: false });
  useEffect(() => {
    let wanted = true;
    const figures = narrow ? { figureWidth: NARROW_FIGURE } : {};
    reportCase(document, { language, units, date: new Date().toISOString(), toolVersion: VERSION, ...figures }).then(
      (report) => {
        if (wanted) setState({ report, failed: false });
      },
      () => {
        if (wanted) setState({ report: null, failed: true });
      },
    );
    return () => {
      wanted = false;
    };
  }, [document, language, units, narrow]);
  return state;
}
