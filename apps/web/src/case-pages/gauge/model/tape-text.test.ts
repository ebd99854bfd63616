import { expect, test } from "vitest";
import { lengthText, typedHeading } from "./tape-text.js";

const AS_TYPED = { shaft: "front", lateral: "6", over: "1180", toward: "right" } as const;

test("millimetres and inches become the heading that the case file spells", () => {
  expect(typedHeading(AS_TYPED, "metric")).toEqual({ ok: true, heading: { of: "front", lateralMm: 6, toward: "right", overMm: 1180 } });
  expect(typedHeading({ ...AS_TYPED, lateral: "1/2", over: "46 1/2" }, "us")).toEqual({
    ok: true,
    heading: { of: "front", lateralMm: 12.7, toward: "right", overMm: 1181.1 },
  });
});

test("a unit that is typed counts whatever the device shows", () => {
  expect(typedHeading({ ...AS_TYPED, lateral: "1/2 in", over: "1,2 m" }, "metric")).toEqual({
    ok: true,
    heading: { of: "front", lateralMm: 12.7, toward: "right", overMm: 1200 },
  });
});

test("a straight shaft points to no side", () => {
  expect(typedHeading({ ...AS_TYPED, lateral: "0" }, "metric")).toEqual({ ok: true, heading: { of: "front", lateralMm: 0, overMm: 1180 } });
});

test.each([
  [{ lateral: "" }, "lateral"],
  [{ lateral: "-6" }, "lateral"],
  [{ lateral: "6 deg" }, "lateral"],
  [{ over: "" }, "over"],
  [{ over: "0" }, "over"],
  // Metres where the device takes millimetres.
  [{ over: "1.18" }, "over"],
  [{ toward: null }, "toward"],
  [{ lateral: "1180" }, "too-wide"],
])("%j is refused as %s", (change, fault) => {
  expect(typedHeading({ ...AS_TYPED, ...change }, "metric")).toEqual({ ok: false, fault });
});

test("lengths are shown in the unit of the device, with its decimal sign", () => {
  expect(lengthText(1180, "metric", ".")).toBe("1180 mm");
  expect(lengthText(12.7, "metric", ",")).toBe("12,7 mm");
  expect(lengthText(12.7, "us", ".", false)).toBe("0.50");
});
