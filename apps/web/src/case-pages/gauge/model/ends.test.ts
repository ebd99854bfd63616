import { zeroSign } from "@halfturn/casefile";
import { expect, test } from "vitest";
import { endOnScreen, screenSideOf, vehicleEndOf } from "./ends.js";

test("the driven end of a shaft to the rear axle is its rear end, of one to the front axle its front end", () => {
  expect(vehicleEndOf("rearward", "driven-end")).toBe("rear");
  expect(vehicleEndOf("rearward", "source-end")).toBe("front");
  expect(vehicleEndOf("forward", "driven-end")).toBe("front");
});

test("seen from the left the front of the vehicle is on the left hand, seen from the right on the right hand", () => {
  expect(screenSideOf("front", "left")).toBe("left");
  expect(screenSideOf("rear", "left")).toBe("right");
  expect(screenSideOf("front", "right")).toBe("right");
});

test("the driven end is on the right hand exactly where the case file lets the zero add", () => {
  for (const runs of ["rearward", "forward"] as const) {
    for (const side of ["left", "right"] as const) {
      expect(endOnScreen(runs, side, "right") === "driven-end").toBe(zeroSign(runs, side) === 1);
      expect(endOnScreen(runs, side, "left")).not.toBe(endOnScreen(runs, side, "right"));
    }
  }
});
