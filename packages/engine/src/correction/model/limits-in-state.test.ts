import { expect, test } from "vitest";
import { chain, correctionCase, drivelineCase, poseModel, state } from "../correction-cases.test-support.js";
import { predict } from "../predict/predict.js";

test("needles ask for a least angle in steady running, and not while torque lasts for a moment", () => {
  const driveline = chain([1200], [0]);
  // Both joints run at 0.2 degrees: less than needles ask for, and far from any other limit.
  const nearlyStraight = drivelineCase(driveline, poseModel(driveline, [2, 2.2, 2], { uDeg: 0.02 }));
  const states = [state("steady"), state("pulling", { load: "drive-torque" }), state("overrun", { load: "coast-torque" })];
  const predicted = predict(correctionCase([nearlyStraight], [], { states }), []);
  if (!predicted.ok) throw new Error(JSON.stringify(predicted));
  const verdicts = predicted.value.states.map(({ id, drivelines }) => [id, ...(drivelines[0]?.joints.map(({ verdict }) => verdict) ?? [])]);
  expect(verdicts).toEqual([
    ["steady", "under", "under"],
    ["pulling", "within", "within"],
    ["overrun", "within", "within"],
  ]);
});
