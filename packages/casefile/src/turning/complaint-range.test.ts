import { expect, test } from "vitest";
import { newCase } from "../layout/new-case.js";
import { complaintRange } from "./complaint-range.js";

const document = newCase({ id: "road", title: "Road", layout: "one-piece", createdAt: "2026-05-04T07:30:00Z" });

test("a driver's word is worth a tenth to either side", () => {
  const range = complaintRange({ ...document, complaint: { speedKmh: [72, 108] } });
  // 20 and 30 m/s, a tenth less and a tenth more; a few roundings.
  expect(Math.abs((range?.slowest ?? 0) - 18)).toBeLessThan(1e-9);
  expect(Math.abs((range?.fastest ?? 0) - 33)).toBeLessThan(1e-9);
});

test("without a speed, or at rest, there is no range", () => {
  expect(complaintRange(document)).toBe(null);
  expect(complaintRange({ ...document, complaint: { speedKmh: [0, 0] } })).toBe(null);
});
