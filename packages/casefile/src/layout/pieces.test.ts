import fc from "fast-check";
import { expect, test } from "vitest";
import { restore } from "../restore/restore.js";
import { serialise } from "../serialise/serialise.js";
import { withDriveline } from "./built.js";
import { LAYOUTS, newCase } from "./new-case.js";
import { inPieces, PIECES } from "./pieces.js";

const made = (layout: (typeof LAYOUTS)[number]) => newCase({ id: "a", title: "", layout, createdAt: "2026-01-02T03:04:05Z" });
const [twoPiece] = made("two-piece").drivelines;
if (!twoPiece) throw new Error("a new case has a driveline");

test("an empty shaft in other pieces is that of a new case with as many", () => {
  const ofLayouts = (["one-piece", "two-piece", "three-piece"] as const).map((layout) => made(layout).drivelines[0]);
  for (const from of ofLayouts) expect(PIECES.map((pieces) => from && inPieces(from, pieces))).toEqual(ofLayouts);
});

test("ends stay what they are, and a new section comes between them", () => {
  const [front, back] = twoPiece.sections;
  const [first, between, last] = twoPiece.joints;
  const typed = {
    ...twoPiece,
    sections: [
      { ...front, id: "front", lengthMm: 900, label: "Front tube" },
      { ...back, id: "back", lengthMm: 1400 },
    ],
    joints: [
      { ...first, id: "J1", kind: "ball" as const },
      { ...between, id: "J2", support: { bearingToJointMm: 110 } },
      { ...last, id: "J3", label: "at the pinion" },
    ],
  } as typeof twoPiece;
  const three = inPieces(typed, 3);
  expect(three.sections.map(({ id, lengthMm }) => [id, lengthMm])).toEqual([
    ["front", 900],
    ["middle", undefined],
    ["back", 1400],
  ]);
  expect(three.joints.map(({ id, kind, support, label }) => [id, kind, support, label])).toEqual([
    ["J1", "ball", undefined, undefined],
    ["J2", "cross", { bearingToJointMm: 110 }, undefined],
    ["J3", "cross", {}, undefined],
    ["J4", "cross", undefined, "at the pinion"],
  ]);
  expect(inPieces(three, 2)).toEqual(typed);
  // No tape has been laid along the whole: a length of one of its sections is none of it.
  const one = inPieces(typed, 1);
  expect(one.sections).toEqual([{ id: "shaft", phasingDeg: 0, phasingMeasured: false }]);
  expect(one.joints.map(({ id, label }) => [id, label])).toEqual([
    ["J1", undefined],
    ["J2", "at the pinion"],
  ]);
});

test("a joint that stands alone gets a shaft", () => {
  const alone = { ...twoPiece, sections: [], joints: twoPiece.joints.slice(0, 1) };
  expect(inPieces(alone, 1).joints.map(({ id }) => id)).toEqual(["J1", "J2"]);
});

test("whatever is built from a new case is a case, with every id once", () => {
  const step = fc.oneof(
    fc.record({ pieces: fc.constantFrom(...PIECES), at: fc.nat(7) }),
    fc.record({ runs: fc.constantFrom("rearward" as const, "forward" as const) }),
  );
  fc.assert(
    fc.property(fc.constantFrom(...LAYOUTS), fc.array(step, { maxLength: 6 }), (layout, steps) => {
      let document = made(layout);
      for (const next of steps) {
        if ("runs" in next) document = withDriveline(document, next.runs);
        else {
          const at = next.at % document.drivelines.length;
          document = { ...document, drivelines: document.drivelines.map((one, k) => (k === at ? inPieces(one, next.pieces) : one)) };
        }
      }
      expect(restore(serialise(document))).toEqual({ ok: true, case: document });
    }),
  );
});
