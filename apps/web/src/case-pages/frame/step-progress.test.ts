import { analyseCase, type Case, newCase } from "@halfturn/casefile";
import { expect, test } from "vitest";
import { stepProgress } from "./step-progress.js";

const empty = newCase({ id: "c", title: "", layout: "one-piece", createdAt: "2026-02-03T08:00:00Z" });
const analysed = (document: Case) => analyseCase(document, {}, { draws: 200, seed: 1, accepted: [] });
const codeOf = (step: Parameters<typeof stepProgress>[0], document: Case) => {
  const { state, note } = stepProgress(step, document, analysed(document));
  return `${state}: ${note.code}`;
};

const described: Case = {
  ...empty,
  complaint: { speedKmh: [60, 80] },
  drivelines: empty.drivelines.map((driveline) => ({
    ...driveline,
    sections: driveline.sections.map((section) => ({ ...section, lengthMm: 1400, phasingMeasured: true })),
  })),
};

const gauged = (change: Partial<NonNullable<Case["gauging"]>[number]> = {}): Case => ({
  ...described,
  gauging: [
    {
      driveline: "rear",
      stage: "as-found",
      state: { rideHeight: "normal", wheels: "on-ground" },
      gauge: { resolutionDeg: 0.1, accuracyDeg: 0.1 },
      readings: [
        { at: "source", deg: 2, lower: "driven-end", side: "left" },
        { at: "shaft", deg: 4, lower: "driven-end", side: "left" },
        { at: "driven", deg: 2, lower: "driven-end", side: "left" },
      ],
      ...change,
    },
  ],
});

test("a new case lacks everything, and says what first", () => {
  expect(codeOf("describe", empty)).toBe("open: complaint-missing");
  expect(codeOf("record", empty)).toBe("open: not-recorded");
  expect(codeOf("isolate", empty)).toBe("open: not-isolated");
  expect(codeOf("gauge", empty)).toBe("open: not-gauged");
  expect(codeOf("explain", empty)).toBe("open: gauge-first");
  expect(codeOf("correct", empty)).toBe("open: nothing-to-adjust");
  expect(codeOf("prove", empty)).toBe("open: not-made");
  expect(codeOf("report", empty)).toBe("open: gauge-first");
});

test("describing lacks lengths, then the phasing, then nothing", () => {
  expect(codeOf("describe", { ...empty, complaint: { notes: "rumbles" } })).toBe("part: lengths-missing");
  const [driveline] = described.drivelines;
  const guessed = { ...described, drivelines: [{ ...driveline, sections: [{ id: "shaft", lengthMm: 1400, phasingDeg: 0 }] }] } as Case;
  expect(codeOf("describe", guessed)).toBe("part: phasing-missing");
  expect(codeOf("describe", described)).toBe("done: described");
});

test("gauging says how many shafts are left, and when the numbers are not road angles", () => {
  expect(codeOf("gauge", gauged())).toBe("done: gauged");
  const part = stepProgress("gauge", gauged({ readings: [] }), analysed(gauged({ readings: [] })));
  expect(part).toEqual({ state: "part", note: { code: "shafts-to-read", count: 3 } });
  expect(codeOf("explain", gauged({ readings: [] }))).toBe("open: gauge-first");
  expect(codeOf("report", gauged({ readings: [] }))).toBe("open: gauge-first");
  expect(codeOf("report", gauged())).toBe("done: ready");
  const hanging = gauged({ state: { rideHeight: "drooped", wheels: "hanging" } });
  expect(codeOf("gauge", hanging)).toBe("trouble: not-road-angles");
  expect(codeOf("explain", hanging)).toBe("trouble: not-road-angles");
});

test("explaining says the worst of what was found", () => {
  const steep = gauged({
    readings: [
      { at: "source", deg: 2, lower: "driven-end", side: "left" },
      { at: "shaft", deg: 14, lower: "driven-end", side: "left" },
      { at: "driven", deg: 2, lower: "driven-end", side: "left" },
    ],
  });
  expect(codeOf("explain", steep)).toBe("trouble: over");
});

test("a correction is chosen, made, and then gauged again", () => {
  const correction = {
    state: "chosen",
    chosenAt: "2026-02-03",
    basis: [{ driveline: "rear", gauging: 0 }],
    changes: [],
    predicted: [],
  } as const;
  const chosen: Case = { ...gauged(), corrections: [correction] };
  expect(codeOf("correct", chosen)).toBe("part: chosen");
  expect(codeOf("prove", chosen)).toBe("part: not-gauged-after");
  const [first] = gauged().gauging ?? [];
  const proved = { ...chosen, corrections: [{ ...correction, state: "made" }], gauging: [first, { ...first, stage: "after" }] } as Case;
  expect(codeOf("correct", proved)).toBe("done: made");
  expect(codeOf("prove", proved)).toBe("done: proved");
  expect(codeOf("report", proved)).toBe("done: ready");
});
