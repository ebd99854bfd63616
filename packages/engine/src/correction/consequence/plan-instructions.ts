import type { CorrectionModel } from "../geometry/correction-model.js";
import { type Change, toMillimetres } from "../model/index.js";
import { slipKnown, slipOf } from "../search/hard-limits.js";
import type { StateLimitUse } from "../search/limit-report.js";
import { adjusterInstructions } from "./adjuster-instructions.js";
import { type Instruction, instruction } from "./instruction.js";
import { tradeOffs } from "./trade-offs.js";

/** Everything a plan asks of the technician, in the order of the work. `before` and `after`: every limit with nothing done and with the plan. */
export function planInstructions(
  model: CorrectionModel,
  changes: readonly Change[],
  before: readonly StateLimitUse[],
  after: readonly StateLimitUse[],
): readonly Instruction[] {
  if (changes.length === 0) return [instruction("do-nothing")];
  const own = changes.flatMap(({ adjusterId, amount }) => {
    const found = model.adjusters.find(({ adjuster }) => adjuster.id === adjusterId);
    return found ? adjusterInstructions(model.input, found.adjuster, amount) : [];
  });
  const slips = slipInstructions(model, changes, after);
  return [
    ...slips.filter(({ code }) => code === "measure-slip-before-fitting"),
    ...own,
    instruction("replace-single-use-fasteners"),
    instruction("tighten-to-maker"),
    ...slips.filter(({ code }) => code === "check-slip"),
    ...tradeOffs(before, after),
    instruction("gauge-again", {}, "prove-from-slow"),
  ];
}

/** For every driveline whose joints move: the slip at its two worst states, or that it must be measured first. */
function slipInstructions(model: CorrectionModel, changes: readonly Change[], after: readonly StateLimitUse[]): readonly Instruction[] {
  const moving = changes.flatMap(({ adjusterId }) =>
    model.adjusters.filter(({ adjuster }) => adjuster.id === adjusterId && adjuster.kind !== "rephase"),
  );
  return model.drivelines.flatMap((on, d) => {
    if (on.input.driveline.sections.length === 0 || !moving.some(({ drivelines }) => drivelines.includes(d))) return [];
    const driveline = on.input.driveline.id;
    const section = on.input.driveline.sections[on.topology.slipSection]?.id ?? "";
    if (!slipKnown(on)) return [instruction("measure-slip-before-fitting", { driveline, section }, "too-little-to-conclude")];
    const travels = after.filter(({ drivelineId }) => drivelineId === driveline).map(({ slipTravel }) => slipTravel);
    const out = Math.max(...travels);
    const slip = slipOf(on);
    return [
      instruction("check-slip", {
        driveline,
        section,
        outMm: toMillimetres(Math.max(0, out)),
        inMm: toMillimetres(Math.max(0, -Math.min(...travels))),
        engagedMm: toMillimetres((slip?.engaged ?? 0) - out),
        minimumEngagedMm: toMillimetres(slip?.minimumEngaged ?? 0),
      }),
    ];
  });
}
