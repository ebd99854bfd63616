import type { Case, GaugingChoice, Stage } from "@halfturn/casefile";
import type { Catalogue } from "@halfturn/words";
import { BAD_USE, UNANSWERED } from "../program/exit-code.js";

export interface ChoiceFlags {
  readonly stage?: Stage;
  readonly gauging?: number;
}

export type Chosen =
  | { readonly ok: true; readonly choice: GaugingChoice }
  | { readonly ok: false; readonly exitCode: typeof UNANSWERED | typeof BAD_USE; readonly line: string };

/** Checks `--stage` and `--gauging` against the case before anything is computed. */
export function chooseGauging(document: Case, { stage, gauging }: ChoiceFlags, { terminal: { analysed }, numbers }: Catalogue): Chosen {
  const all = document.gauging ?? [];
  const refuse = (exitCode: typeof UNANSWERED | typeof BAD_USE, line: string): Chosen => ({ ok: false, exitCode, line });
  if (gauging !== undefined) {
    const named = all[gauging];
    if (!named) return refuse(BAD_USE, analysed.noGaugingNumber(gauging, all.length));
    if (stage !== undefined && named.stage !== stage) return refuse(BAD_USE, analysed.stageMismatch(gauging, named.stage, stage));
  } else if (stage !== undefined && !all.some((candidate) => candidate.stage === stage)) {
    return refuse(UNANSWERED, analysed.noStage(stage, numbers.all([...new Set(all.map((candidate) => candidate.stage))])));
  }
  return { ok: true, choice: { ...(stage === undefined ? {} : { stage }), ...(gauging === undefined ? {} : { gauging }) } };
}
