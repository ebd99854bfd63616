import { planSteps } from "@halfturn/engine/correction";
import { DEFAULT_LIMITS } from "@halfturn/engine/limits";
import { degreesToRadians } from "@halfturn/engine/units";
import { expect, test } from "vitest";
import { exampleCase } from "../example-cases.test-support.js";
import { restore } from "../restore/restore.js";
import type { Case, CaseGauging } from "../schema/case.js";
import { serialise } from "../serialise/serialise.js";
import { toAnalysisInput } from "./to-analysis-input.js";
import { toCorrectionInput } from "./to-correction-input.js";
import { toDriveline } from "./to-driveline.js";

const SETTINGS = { defaults: DEFAULT_LIMITS, draws: 100, seed: 1 };
const document = exampleCase("two-piece");
const [asFound] = document.gauging ?? [];
if (!asFound) throw new Error("the example was gauged");
/** One step of the example's spline. */
const STEP_DEG = 360 / 16;

const turned: NonNullable<Case["corrections"]>[number] = {
  state: "made",
  chosenAt: "2026-02-03",
  basis: [{ driveline: "rear", gauging: 0 }],
  changes: [{ adjuster: "turn-front", amount: -2, unit: "step" }],
  predicted: [],
};
const gauged = (...after: readonly Partial<CaseGauging>[]): Case => ({
  ...document,
  gauging: [asFound, ...after.map((one): CaseGauging => ({ ...asFound, stage: "after", ...one }))],
});
const front = (of: Case, gauging: number | null) => {
  const section = toDriveline(of, 0, gauging).sections[0];
  return [section?.phasing, section?.phasingMeasured];
};
const deg = degreesToRadians;

test("a gauging that says nothing of phasings leaves them as the driveline has them, as files always did", () => {
  expect(front(gauged({}), 1)).toEqual([deg(90), true]);
  expect(front(gauged({}), null)).toEqual([deg(90), true]);
});

test("a phasing seen at a gauging holds from there on, not before", () => {
  const seen = gauged({ phasings: [{ section: "front", phasingDeg: 45 }] }, {});
  expect([0, 1, 2].map((gauging) => front(seen, gauging))).toEqual([
    [deg(90), true],
    [deg(45), true],
    [deg(45), true],
  ]);
});

test("a section that a correction turned is where the turn put it, but nobody has seen it there until a gauging says so", () => {
  const unseen = { ...gauged({}), corrections: [turned] };
  expect(front(unseen, 0)).toEqual([deg(90), true]);
  expect(front(unseen, 1)).toEqual([deg(90 - 2 * STEP_DEG), false]);
  const seen = { ...gauged({}, { phasings: [{ section: "front", phasingDeg: 43 }] }), corrections: [turned] };
  expect(front(seen, 1)).toEqual([deg(90 - 2 * STEP_DEG), false]);
  expect(front(seen, 2)).toEqual([deg(43), true]);
});

test("analysis and planning go by the phasing of the gauging they use", () => {
  const seen = { ...gauged({ phasings: [{ section: "front", phasingDeg: 45 }] }), corrections: [turned] };
  expect(toAnalysisInput(seen, { driveline: 0, gauging: 1 }, SETTINGS).driveline.sections[0]?.phasing).toBe(deg(45));
  expect(toCorrectionInput(seen, SETTINGS).drivelines[0]?.driveline.sections[0]?.phasing).toBe(deg(45));
  const { value } = planSteps(toCorrectionInput({ ...gauged({}), corrections: [turned] }, SETTINGS)).next();
  expect(value).toMatchObject({ ok: false, reasons: [{ code: "correction.phasing-not-measured", params: { section: "front" } }] });
});

test("a file with phasings restores and is written back as it was; a section that is not there, or twice, is a problem", () => {
  const text = serialise(gauged({ phasings: [{ section: "front", phasingDeg: 45 }] }));
  const restored = restore(text);
  expect(restored.ok && serialise(restored.case)).toBe(text);
  const wrong = restore(
    serialise(
      gauged({
        phasings: [
          { section: "frnt", phasingDeg: 45 },
          { section: "back", phasingDeg: 0 },
          { section: "back", phasingDeg: 90 },
        ],
      }),
    ),
  );
  expect(wrong).toMatchObject({
    ok: false,
    problems: [
      { code: "unknown-reference", path: "gauging[1].phasings[0].section", params: { got: "frnt", suggestion: "front" } },
      { code: "duplicate-id", path: "gauging[1].phasings[2].section" },
    ],
  });
});

test("a bearing further from its joint than its section is long is a problem", () => {
  const short = {
    ...document,
    drivelines: document.drivelines.map((one) => ({ ...one, sections: one.sections.map((each) => ({ ...each, lengthMm: 100 })) })),
  };
  const { problems } = restore(serialise(short)) as { readonly problems?: readonly unknown[] };
  expect(problems).toMatchObject([{ code: "contradiction", path: "drivelines[0].joints[1].support.bearingToJointMm" }]);
});
