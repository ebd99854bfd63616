import { type CorrectionInput, type Outcome, type PlanOptions, type PlanResult, plan } from "@halfturn/engine/correction";
import type { CliContext } from "../program/context.js";
import { pause } from "../program/pause.js";
import { withProgress } from "../program/with-progress.js";

/** Searches with its progress on a terminal, until done or until the user asks to stop. */
export const searchPlans = (
  input: CorrectionInput,
  options: PlanOptions,
  { quiet }: { readonly quiet: boolean },
  context: CliContext,
): Promise<Outcome<PlanResult> | "stopped"> =>
  withProgress(context, { quiet, say: context.words.correction.searching }, (work) =>
    // A timer, not a promise: the interrupt has to get its turn.
    plan(input, options, { ...work, pause }),
  );
