import { degreesToRadians } from "@halfturn/engine/units";
import { expect, test } from "vitest";
import { exampleCase } from "../example-cases.test-support.js";
import { newCase } from "../layout/new-case.js";
import type { Case } from "../schema/case.js";
import { toDriveline } from "./to-driveline.js";

test("joints and sections in power order, in metres and radians, and nothing that the file does not say", () => {
  expect(toDriveline(exampleCase("four-wheel-drive"), 1, null)).toEqual({
    id: "front",
    joints: [
      {
        id: "J1",
        kind: "double-cross",
        centring: { crossesApart: 0.066, ballFromCross: 0.033, ballFixedTo: "driven-side" },
        statedAngle: degreesToRadians(28),
      },
      { id: "J2", kind: "cross" },
    ],
    sections: [{ id: "shaft", phasing: 0, phasingMeasured: true, length: 0.78 }],
  });
});

test("a phasing that is not written, or null, is not known; one that is not marked as measured was not", () => {
  const phasings = (section: object) => {
    const document = newCase({ id: "a", title: "a", layout: "one-piece", createdAt: "2026-01-02" });
    const [driveline] = document.drivelines;
    const changed = { ...document, drivelines: [{ ...driveline, sections: [section] }] } as Case;
    return toDriveline(changed, 0, null).sections;
  };
  expect(phasings({ id: "shaft" })).toEqual([{ id: "shaft", phasing: null, phasingMeasured: false }]);
  expect(phasings({ id: "shaft", phasingDeg: null })).toEqual([{ id: "shaft", phasing: null, phasingMeasured: false }]);
  expect(phasings({ id: "shaft", phasingDeg: 90 })).toEqual([{ id: "shaft", phasing: degreesToRadians(90), phasingMeasured: false }]);
});

test("an index that is not there is a mistake of the program", () => {
  expect(() => toDriveline(exampleCase("one-piece"), 1, null)).toThrow(RangeError);
});
