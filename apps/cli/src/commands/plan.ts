import { planToJson, predictionToJson, recordCorrection, serialise } from "@halfturn/casefile";
import { type PlanOptions, type PlanResult, predict, reason } from "@halfturn/engine/correction";
import type { Terminal } from "@halfturn/words";
import { refuse } from "../correction/correction-refusal.js";
import { groundFindings } from "../correction/ground-findings.js";
import { keptAdjusters } from "../correction/kept-adjusters.js";
import { type PreparedCorrection, prepareCorrection } from "../correction/prepare-correction.js";
import { searchPlans } from "../correction/search-plans.js";
import { writeFault } from "../files/file-fault.js";
import { fileName, STANDARD_INPUT } from "../files/read-case.js";
import { writeWhole } from "../files/write-whole.js";
import { type CliContext, fail } from "../program/context.js";
import { BAD_USE, STOPPED } from "../program/exit-code.js";
import { jsonText } from "../program/json-text.js";
import { planLines } from "../render/plan.js";
import { pageWidth } from "../render/wrap.js";
import type { PlanFlags } from "./plan-flags.js";

/** As many plans as are worth reading; more only where one further down is asked for. */
const PLANS = 5;

/** Ranks the corrections that the stock allows, for people or as the JSON contract, and writes the chosen one into the case. */
export async function runPlan(this: CliContext, flags: PlanFlags, path: string): Promise<void> {
  const { words, paint } = this;
  if (flags.choose !== undefined && path === STANDARD_INPUT) return fail(this, BAD_USE, [words.terminal.usage.chooseNeedsFile]);
  const prepared = await prepareCorrection(flags, path, this);
  if (!prepared) return;
  const { basis, findings } = prepared;
  const { document, input } = basis;
  if (input.adjusters.length === 0) return refuse([reason("correction.no-adjusters", "adjusters")], findings, document, path, this);
  const keep = keptAdjusters(flags.keep ?? [], input.adjusters, words);
  if (!keep.ok) return fail(this, BAD_USE, keep.lines);

  const asked = Math.max(flags.show ?? 1, flags.choose ?? 1);
  const options: PlanOptions = { maxChanges: flags.maxChanges, keep: keep.keep, count: Math.max(PLANS, asked), detailDraws: flags.draws };
  const found = await searchPlans(input, options, { quiet: flags.json }, this);
  if (found === "stopped") return fail(this, STOPPED, [words.correction.stopped]);
  if (!found.ok) return refuse(found.reasons, findings, document, path, this);
  const plans = found.value;
  const wrong = wrongNumber(flags, plans, words.terminal);
  if (wrong !== null) return fail(this, BAD_USE, [wrong]);
  if (!(await prepared.record())) return;
  if (flags.choose !== undefined && !(await choosePlan(flags.choose, plans, prepared, path, this))) return;

  const json = planToJson(plans, basis);
  if (flags.json) {
    this.process.stdout.write(jsonText(json));
    return;
  }
  const before = predict({ ...input, draws: flags.draws }, []);
  if (!before.ok) return refuse(before.reasons, findings, document, path, this);
  const view = { words, paint, width: pageWidth(this.process.stdout.columns) };
  const page = {
    plan: json,
    before: predictionToJson(before.value, basis).states,
    basis,
    findings: groundFindings(basis),
    draws: flags.draws,
    shown: flags.show ?? flags.choose ?? null,
    chosen: flags.choose !== undefined,
    path: fileName(path, words),
  };
  this.process.stdout.write(`${planLines(page, view).join("\n")}\n`);
}

/** Why a plan cannot be shown or chosen by its number; null where all is well. */
function wrongNumber(flags: PlanFlags, { plans }: PlanResult, { usage }: Terminal): string | null {
  for (const flag of ["show", "choose"] as const) {
    const number = flags[flag];
    if (number !== undefined && number > plans.length) return usage.noSuchPlan(flag, number, plans.length);
  }
  return flags.choose !== undefined && plans[flags.choose - 1]?.changes.length === 0 ? usage.nothingToRecord(flags.choose) : null;
}

/** Writes the plan into the case file, whole or not at all. False once a refusal was printed. */
async function choosePlan(
  number: number,
  { plans, leftOut }: PlanResult,
  { asRead, basis }: PreparedCorrection,
  path: string,
  context: CliContext,
): Promise<boolean> {
  const { words } = context;
  const plan = plans[number - 1];
  // The number was checked against the plans before.
  if (!plan) throw new RangeError(`no plan ${number}`);
  const { document, input, chosen } = basis;
  const out = leftOut.map(({ params }) => params.driveline);
  const spoke = chosen.filter(({ driveline }) => !out.includes(document.drivelines[driveline]?.id));
  const recorded = recordCorrection(document, { ...plan, input, basis: spoke }, context.now());
  try {
    await writeWhole(path, serialise(recorded, asRead), "replace", context.newId());
  } catch (error) {
    fail(context, BAD_USE, [writeFault(error, path, words.terminal)]);
    return false;
  }
  context.process.stderr.write(`${words.correction.chosen(number, path)}\n`);
  return true;
}
