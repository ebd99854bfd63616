import fc from "fast-check";
import { expect, test } from "vitest";
import * as c from "../correction-cases.test-support.js";
import { correctionModel } from "../geometry/correction-model.js";
import { drawRecords } from "../geometry/draw-records.js";
import type { CorrectionInput } from "../model/index.js";
import { bestFirst, type Ranked } from "./best-first.js";
import { candidateSpace, placesOf, totalSteps, writeAmounts } from "./candidate-space.js";
import { BLOCKED, candidateMargin, drawFails, type Judge, newJudge, prepare } from "./judge.js";
import { marginTable } from "./margin-table.js";
import { compareByEffect, compareIds, compareKeys, type KeyOrder } from "./rank-key.js";

function run<T, R>(steps: Generator<T, R>): R {
  for (;;) {
    const { done, value } = steps.next();
    if (done) return value as R;
  }
}

function searched(judge: Judge, maxChanges: number, count: number, order: KeyOrder): { ranked: Ranked[]; judged: number } {
  const space = candidateSpace(judge.model, maxChanges, () => true);
  const table = run(marginTable(judge, space));
  const ranked: Ranked[] = [];
  for (const found of bestFirst(judge, space, table, () => true, order)) {
    if (found) ranked.push(found);
    if (ranked.length === count) break;
  }
  return { ranked, judged: space.size };
}

/** Every candidate on every draw, no bound, then one sort. */
function bruteForce(judge: Judge, maxChanges: number, count: number, order: KeyOrder): Ranked[] {
  const { model, drawn } = judge;
  const space = candidateSpace(model, maxChanges, () => true);
  const all: Ranked[] = [];
  for (const subset of space.subsets) {
    for (let index = 0; index < subset.size; index++) {
      const places = new Int32Array(subset.adjusters.length);
      placesOf(subset, index, places);
      writeAmounts(subset, places, judge.amounts);
      const margin = candidateMargin(judge, subset.drivelines);
      if (margin === BLOCKED) continue;
      prepare(judge, subset.drivelines);
      let fails = 0;
      for (let row = 1; row <= drawn.draws; row++) if (drawFails(judge, subset.drivelines, row, judge.exact)) fails++;
      const steps = totalSteps(model, subset, places);
      all.push({ subset, places, key: { fails, labour: subset.labour, margin, changes: subset.adjusters.length, steps } });
    }
  }
  all.sort((a, b) => order(a.key, b.key, drawn.draws) || compareIds(model, a.subset, a.places, b.subset, b.places));
  return all.slice(0, count);
}

const shown = (ranked: readonly Ranked[]) =>
  ranked.map(({ subset, places, key }) => ({ adjusters: subset.adjusters, places: [...places], fails: key.fails, margin: key.margin }));

const judgeOf = (input: CorrectionInput, draws: number): Judge => {
  const model = correctionModel(input);
  return newJudge(model, drawRecords(model, draws, input.seed));
};

const angle = fc.double({ min: -1.5, max: 7, noNaN: true });
const front = c.chain([840], [0], "front");

const inputs = fc
  .record({
    rear: fc.tuple(angle, angle, angle, angle),
    front: fc.tuple(angle, angle, angle),
    travel: fc.integer({ min: -50, max: 30 }),
    seed: fc.integer({ min: 0, max: 1000 }),
    withFront: fc.boolean(),
    evenLabour: fc.boolean(),
  })
  .map(({ rear, front: frontAngles, travel, seed, withFront, evenLabour }) => {
    const labour = evenLabour ? { labour: 1 } : {};
    const rearCase = c.twoPiece(rear, { axle: c.axle({ windUp: { drive: c.deg(1), coast: c.deg(0.5) } }) });
    const frontCase = c.drivelineCase(front, c.poseModel(front, frontAngles), {
      runs: "forward",
      path: "drivelines[1]",
      firstJoint: { forward: c.mm(300), left: c.mm(0), up: c.mm(-40) },
    });
    return c.correctionCase(
      withFront ? [rearCase, frontCase] : [rearCase],
      [
        c.wedge("wedge", c.rangeDeg(-3, 3, 0.5), labour),
        c.supportDrop("drop", c.rangeMm(0, 24, 3), labour),
        c.supportShift("shift", c.rangeMm(-9, 9, 3), labour),
        c.mountSpacer("mount", c.rangeMm(0, 18, 3), labour),
        {
          kind: "rephase",
          id: "clock",
          labour: 1,
          parts: 0,
          stock: { kind: "sizes", sizes: [] },
          path: "adjusters[4]",
          drivelineId: "rear",
          sectionId: "s1",
          splineTeeth: 16,
        },
      ],
      {
        seed,
        states: [
          c.state("normal"),
          c.state("laden", { axleTravel: c.mm(travel), pinionPitch: c.deg(0.4) }),
          c.state("pull", { load: "drive-torque" }),
        ],
      },
    );
  });

test.each([
  ["chance, labour, margin", compareKeys, 15],
  ["chance, margin", compareByEffect, 6],
])(
  "by %s, the search gives the very list that looking at every candidate on every draw gives",
  (_, order, numRuns) => {
    fc.assert(
      fc.property(inputs, (input) => {
        const judge = judgeOf(input, 40);
        expect(shown(searched(judge, 2, 6, order).ranked)).toEqual(shown(bruteForce(judge, 2, 6, order)));
      }),
      { numRuns, seed: 7 },
    );
  },
  60_000,
);
