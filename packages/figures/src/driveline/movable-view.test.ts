import { expect, test } from "vitest";
import { samplePicture, TWO_PIECE } from "../sample-drivelines.test-support.js";
import { SAMPLE_LABELS } from "../sample-labels.test-support.js";
import { MOVABLE_REACH, movableView } from "./movable-view.js";

const measured = samplePicture(TWO_PIECE);
const STILL = [0, 0, 0];
/** Drawn places are worked out in pixels with a few sums. */
const ROUNDING = 1e-9;
const view = (rises: readonly number[], width = 720) => movableView(measured, measured, rises, { labels: SAMPLE_LABELS, width });

test("a joint goes up by its rise and nothing else moves", () => {
  const still = view(STILL);
  const moved = view([0, 0.01, 0]);
  const up = still.joints.map(({ y }, k) => y - (moved.joints[k]?.y ?? Number.NaN));
  expect(up[0]).toBe(0);
  expect(up[2]).toBe(0);
  expect(Math.abs((up[1] ?? 0) - 0.01 * still.pixelsPerMetre)).toBeLessThan(ROUNDING);
  expect([moved.start, moved.end, moved.height, moved.factor]).toEqual([still.start, still.end, still.height, still.factor]);
});

test.each([320, 390, 720, 1200])("within its reach a joint stays in a drawing %i pixels wide", (width) => {
  for (const sign of [-1, 1]) {
    const {
      joints,
      width: wide,
      height,
    } = view(
      [sign, sign, sign].map((way) => way * MOVABLE_REACH),
      width,
    );
    for (const { x, y } of joints) {
      expect(x > 0 && x < wide).toBe(true);
      expect(y > 0 && y < height).toBe(true);
    }
  }
});

test("the drawing says each joint and stays finite", () => {
  const { svg } = view([0.02, -0.02, 0.01], 360);
  expect(svg).not.toContain("NaN");
  for (const { id } of measured.driveline.joints) expect(svg).toContain(id);
});
