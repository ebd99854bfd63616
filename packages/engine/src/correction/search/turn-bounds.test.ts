import fc from "fast-check";
import { expect, test } from "vitest";
import { angleBetween, vec3 } from "../../geometry/index.js";
import * as c from "../correction-cases.test-support.js";
import { correctionModel } from "../geometry/correction-model.js";
import { drawRecords } from "../geometry/draw-records.js";
import { newPlacement, PLACED, placeShafts } from "../geometry/place-shafts.js";
import { newMoves, writeMoves } from "../geometry/write-moves.js";
import { boxSlack } from "./box-slack.js";
import { candidateSpace, writeAmounts } from "./candidate-space.js";
import { newJudge } from "./judge.js";

/** The joint's slack is the sum of its two shafts' turns; angles add up by rounding only. */
const ROUNDING = 1e-10;

test("no joint angle moves further among the candidates of a box than the slack allows", () => {
  const on = c.twoPiece([4, 3, 4.5, 1.5], { axle: c.axle({ jointAboveCentre: c.mm(20), springPosition: "below-axle" }) });
  const input = c.correctionCase(
    [on],
    [
      c.wedge("wedge", c.rangeDeg(-3, 3, 0.25)),
      c.supportDrop("drop", c.rangeMm(0, 24, 1)),
      c.supportShift("shift", c.rangeMm(-12, 12, 1)),
      c.mountSpacer("mount", c.rangeMm(0, 15, 1)),
      {
        kind: "ride-height",
        id: "lift",
        labour: 1,
        parts: 0,
        stock: c.rangeMm(-30, 30, 2),
        path: "adjusters[4]",
        drivelineId: "rear",
        pitchPerMetre: 0.4,
      },
    ],
    { states: [c.state("normal"), c.state("laden", { axleTravel: c.mm(-40), pinionPitch: c.deg(0.6) })] },
  );
  const model = correctionModel(input);
  const drawn = drawRecords(model, 20, 3);
  const judge = newJudge(model, drawn);
  const bounds = boxSlack(judge);
  const subsets = candidateSpace(model, 3, () => true).subsets.filter(({ adjusters }) => adjusters.length === 3);
  const { topology } = model.drivelines[0] as (typeof model.drivelines)[number];
  const moves = newMoves(model);
  const amounts = new Float64Array(model.adjusters.length);
  const angles = (subset: (typeof subsets)[number], places: Int32Array, row: number, s: number): number[] => {
    writeAmounts(subset, places, amounts);
    writeMoves(model, amounts, moves);
    const out = newPlacement(topology.joints);
    const move = moves[0]?.[s] as Float64Array;
    expect(placeShafts(topology, drawn.records[0] as Float64Array, row * topology.layout.stride, move, s, out)).toBe(PLACED);
    const at = (k: number) =>
      vec3(out.directions[3 * k] as number, out.directions[3 * k + 1] as number, out.directions[3 * k + 2] as number);
    return Array.from({ length: topology.joints }, (_, k) => angleBetween(at(k), at(k + 1)));
  };

  let tightest = Number.POSITIVE_INFINITY;
  const share = fc.double({ min: 0, max: 1, noNaN: true });
  fc.assert(
    fc.property(
      fc.integer({ min: 0, max: subsets.length - 1 }),
      fc.array(fc.tuple(share, share, share), { minLength: 3, maxLength: 3 }),
      fc.integer({ min: 1, max: 20 }),
      fc.integer({ min: 0, max: 1 }),
      (which, shares, row, s) => {
        const subset = subsets[which] as (typeof subsets)[number];
        const pick = (k: number, part: number): number =>
          Math.min((subset.amounts[k]?.length ?? 1) - 1, Math.floor(part * (subset.amounts[k]?.length ?? 1)));
        const low = Int32Array.from(shares, ([a, b], k) => pick(k, Math.min(a, b)));
        const high = Int32Array.from(shares, ([a, b], k) => pick(k, Math.max(a, b)));
        const centre = low.map((from, k) => (from + (high[k] as number)) >> 1);
        const member = Int32Array.from(shares, ([a, b, m], k) => pick(k, Math.min(a, b) + m * Math.abs(a - b)));
        const slack = bounds.slackOf(subset, low, high, centre)?.[0];
        expect(slack).not.toBeUndefined();
        const here = angles(subset, centre, row, s);
        angles(subset, member, row, s).forEach((angle, k) => {
          const spare = (slack?.angles[k] as number) - Math.abs(angle - (here[k] as number));
          expect(spare).toBeGreaterThan(-ROUNDING);
          if (Math.abs(angle - (here[k] as number)) > 1e-3)
            tightest = Math.min(tightest, (slack?.angles[k] as number) / Math.abs(angle - (here[k] as number)));
        });
      },
    ),
    { numRuns: 1500, seed: 17 },
  );
  // A bound many times too wide would prune nothing.
  expect(tightest).toBeLessThan(1.5);
});
