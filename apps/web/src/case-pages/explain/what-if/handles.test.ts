import { degreesToRadians } from "@halfturn/engine/units";
import { expect, test } from "vitest";
import { draggedSteps, handlesOf, MOST_MILLIMETRES, stepsOf, withSteps } from "./handles.js";
import { unmoved } from "./moves.js";

const STILL = unmoved(2);
/** One product and one arc sine. */
const ROUNDING = 1e-9;

test("every handle keeps the steps it is given, and leaves the others alone", () => {
  for (const handle of handlesOf(2)) {
    const moved = withSteps(STILL, handle, 7);
    expect(handlesOf(2).map((one) => stepsOf(moved, one))).toEqual(
      handlesOf(2).map((one) => (JSON.stringify(one) === JSON.stringify(handle) ? 7 : 0)),
    );
    expect(stepsOf(withSteps(moved, handle, 0), handle)).toBe(0);
  }
});

test("up is up: the source's free end up lowers its driven end, the driven shaft's free end up raises it", () => {
  expect(Math.abs(withSteps(STILL, { kind: "source" }, 10).sourceTilt - degreesToRadians(1))).toBeLessThan(ROUNDING);
  expect(Math.abs(withSteps(STILL, { kind: "driven" }, 10).drivenTilt + degreesToRadians(1))).toBeLessThan(ROUNDING);
  expect(withSteps(STILL, { kind: "joint", joint: 1 }, 3).rises).toEqual([0, 0.003]);
});

test("no handle goes further than it may", () => {
  expect(stepsOf(withSteps(STILL, { kind: "joint", joint: 0 }, 900), { kind: "joint", joint: 0 })).toBe(MOST_MILLIMETRES);
  expect(stepsOf(withSteps(STILL, { kind: "joint", joint: 0 }, -900), { kind: "joint", joint: 0 })).toBe(-MOST_MILLIMETRES);
});

test("a drag follows the drawing: pixels by its scale, a tilt by its larger angles", () => {
  const view = {
    svg: "",
    width: 400,
    height: 200,
    start: { x: -40, y: 100 },
    joints: [
      { x: 80, y: 100 },
      { x: 300, y: 100 },
    ],
    end: { x: 420, y: 100 },
    factor: 10,
    pixelsPerMetre: 2000,
  };
  expect(Math.abs(draggedSteps(view, { kind: "joint", joint: 1 }, 10) - 5)).toBeLessThan(ROUNDING);
  // 60 of 120 pixels is 30 degrees drawn, 3 degrees in truth.
  expect(Math.abs(draggedSteps(view, { kind: "driven" }, 60) - 30)).toBeLessThan(ROUNDING);
  expect(Math.abs(draggedSteps(view, { kind: "source" }, -60) + 30)).toBeLessThan(ROUNDING);
  // 200 pixels to the metre: a joint under the finger would be through its 80 mm within 16 pixels.
  expect(Math.abs(draggedSteps({ ...view, pixelsPerMetre: 200 }, { kind: "joint", joint: 0 }, 75) - MOST_MILLIMETRES)).toBeLessThan(
    ROUNDING,
  );
  // A shaft drawn short, as on a phone: a thumb's stroke of 150 pixels is its whole range, ten degrees, and a few pixels are no degrees.
  const short = { ...view, factor: 4, start: { x: 56, y: 100 }, end: { x: 324, y: 100 } };
  for (const [pixels, steps] of [
    [3, 2],
    [30, 20],
    [75, 50],
    [-75, -50],
  ] as const) {
    expect(Math.abs(draggedSteps(short, { kind: "driven" }, pixels) - steps)).toBeLessThan(ROUNDING);
    expect(Math.abs(draggedSteps(short, { kind: "source" }, pixels) - steps)).toBeLessThan(ROUNDING);
  }
});
