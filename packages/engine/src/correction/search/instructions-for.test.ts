import { expect, test } from "vitest";
import * as c from "../correction-cases.test-support.js";
import type { Outcome } from "../model/index.js";
import { instructionsFor } from "./instructions-for.js";
import { planSteps } from "./plan.js";

const value = <T>(outcome: Outcome<T>): T => {
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.reasons));
  return outcome.value;
};

const driveline = c.chain([1300], [0]);
const slips = [{ sectionId: "s1", engaged: c.mm(70), minimumEngaged: c.mm(45), inwardTravel: c.mm(30) }];
const input = c.correctionCase(
  [c.drivelineCase(driveline, c.poseModel(driveline, [1, 5, -1.5]), { slips })],
  [c.wedge("wedge", c.rangeDeg(-4, 4, 1)), c.mountSpacer("mount", c.rangeMm(0, 12, 3))],
);

test("changes chosen by hand get the steps and cautions that a plan of the same changes gets", () => {
  const steps = planSteps(input, { detailDraws: 100, count: 4 });
  let step = steps.next();
  while (!step.done) step = steps.next();
  const { plans } = value(step.value);
  expect(plans.length).toBeGreaterThan(1);
  for (const { changes, instructions } of plans) expect(value(instructionsFor(input, changes.toReversed()))).toEqual(instructions);
});

test("changes of nought ask for nothing, and what cannot be made is refused", () => {
  expect(value(instructionsFor(input, [{ adjusterId: "wedge", amount: 0 }])).map(({ code }) => code)).toEqual(["do-nothing"]);
  expect(instructionsFor(input, [{ adjusterId: "mount", amount: c.mm(-3) }])).toMatchObject({
    ok: false,
    reasons: [{ code: "correction.removal-exceeds-fitted" }],
  });
});
