import {
  arePartsNamed,
  type Case,
  inPieces,
  isNamed,
  newCase,
  PIECES,
  restore,
  serialise,
  withDriveline,
  withoutDriveline,
} from "@halfturn/casefile";
import fc from "fast-check";
import { expect, test } from "vitest";
import { mergeCases, resolveConflict } from "./merge-cases.js";

const base = newCase({ id: "c", title: "", layout: "two-piece", createdAt: "2026-02-03T08:00:00Z" });
const built =
  (pieces: (typeof PIECES)[number]) =>
  (document: Case): Case => ({ ...document, drivelines: document.drivelines.map((one, k) => (k === 0 ? inPieces(one, pieces) : one)) });
/** A gauging of the first driveline that reads each of its sections. */
const gauged = (document: Case, driveline = 0): Case => {
  const { id, sections } = document.drivelines[driveline] ?? { id: "rear", sections: [] };
  return {
    ...document,
    gauging: [
      ...(document.gauging ?? []),
      {
        driveline: id,
        stage: "as-found",
        state: { rideHeight: "normal", wheels: "on-ground" },
        gauge: { resolutionDeg: 0.1, accuracyDeg: 0.1 },
        readings: sections.map((section) => ({ at: section.id, deg: 0, side: "left" })),
      },
    ],
  };
};
const places = (conflicts: ReturnType<typeof mergeCases>["conflicts"]) => conflicts.map(({ path }) => path);
const problemsOf = (document: Case) => {
  const restored = restore(serialise(document));
  return restored.ok ? [] : restored.problems;
};

test("a shaft that was read on one device stays when another builds it otherwise, and both stand in a conflict", () => {
  const mine = gauged(base);
  const theirs = built(3)(base);
  for (const [a, b] of [
    [mine, theirs],
    [theirs, mine],
  ] as const) {
    const { merged, conflicts } = mergeCases(base, a, b);
    expect(merged.drivelines).toEqual(base.drivelines);
    expect(merged.gauging).toEqual(mine.gauging);
    expect(conflicts).toMatchObject([{ path: "drivelines[0]", mine: a.drivelines[0], theirs: b.drivelines[0] }]);
  }
});

test("a driveline that was taken out on one device comes back when another gauged it", () => {
  const two = withDriveline(base, "forward");
  const { merged, conflicts } = mergeCases(two, withoutDriveline(two, "front"), gauged(two, 1));
  expect(merged).toEqual(gauged(two, 1));
  expect(places(conflicts)).toEqual(["drivelines[1]"]);
  // Whoever chose to take it out after all has to take its gauging out too: the case says so.
  const gone = resolveConflict(merged, conflicts[0] as (typeof conflicts)[number], undefined);
  expect(problemsOf(gone)).toMatchObject([{ code: "unknown-reference" }]);
});

test("a length that was typed for a shaft is no part of one that was built otherwise meanwhile", () => {
  const typed: Case = {
    ...base,
    drivelines: base.drivelines.map((one) => ({ ...one, sections: one.sections.map((section) => ({ ...section, lengthMm: 900 })) })),
  };
  const { merged, conflicts } = mergeCases(base, typed, built(1)(base));
  expect(merged).toEqual(typed);
  expect(places(conflicts)).toEqual(["drivelines[0]"]);
});

test("what else was said of a driveline goes with it as it is built now", () => {
  const named: Case = { ...base, drivelines: base.drivelines.map((one) => ({ ...one, label: "Long one" })) };
  const { merged, conflicts } = mergeCases(base, named, built(3)(base));
  expect(merged.drivelines).toEqual([{ ...inPieces(base.drivelines[0] as Case["drivelines"][number], 3), label: "Long one" }]);
  expect(conflicts).toEqual([]);
});

const step = fc.oneof(
  fc.constantFrom(...PIECES).map((pieces) => (document: Case) => (arePartsNamed(document, "rear") ? document : built(pieces)(document))),
  fc.nat(2).map((at) => (document: Case) => ({
    ...document,
    drivelines: document.drivelines.map((one) => ({
      ...one,
      sections: one.sections.map((section, k) => (k === at ? { ...section, lengthMm: 1000 } : section)),
    })),
  })),
  fc.constant((document: Case) => (document.drivelines.some(({ id }) => id === "front") ? document : withDriveline(document, "forward"))),
  fc.constant((document: Case) => (isNamed(document, "front") ? document : withoutDriveline(document, "front"))),
  fc.nat(1).map((driveline) => (document: Case) => gauged(document, Math.min(driveline, document.drivelines.length - 1))),
);
const steps = fc.array(step, { maxLength: 4 }).map((all) => (document: Case) => all.reduce((before, one) => one(before), document));

/** Both read it, each as it is built there: only one of the two can be right, and a person has to say which. */
const isReadTwice = (start: Case, sides: readonly Case[]): boolean =>
  !arePartsNamed(start, "rear") &&
  sides.every((side) => arePartsNamed(side, "rear")) &&
  new Set(sides.map(({ drivelines }) => drivelines[0]?.sections.length)).size > 1;

test("whatever two devices build and read, what comes of both is a case, unless both read it as no other is built", () => {
  let looked = 0;
  fc.assert(
    fc.property(steps, steps, steps, (before, mine, theirs) => {
      const start = before(base);
      const [a, b] = [mine(start), theirs(start)];
      const { merged, conflicts } = mergeCases(start, a, b);
      if (isReadTwice(start, [a, b])) expect(places(conflicts)).toContain("drivelines[0]");
      else {
        looked++;
        expect(problemsOf(merged)).toEqual([]);
      }
    }),
    { seed: 1, numRuns: 2000 },
  );
  expect(looked).toBeGreaterThan(1000);
});
