import { readFileSync } from "node:fs";
import { type Case, examples, restore, serialise } from "@halfturn/casefile";
import { degreesToRadians } from "@halfturn/engine/units";
import { expect, test } from "vitest";
import { gaugedSince, groundOf } from "./plan-ground.js";
import { dropped, markedMade, markedNotMade, recorded } from "./recorded.js";

const open = (name: string): Case => {
  const restored = restore(readFileSync(new URL(examples.find((one) => one.name === name)?.url ?? ""), "utf8"));
  if (!restored.ok) throw new Error(name);
  return restored.case;
};
const document = open("two-piece");
const NOW = "2026-05-04T10:00:00Z";
const LATER = "2026-05-05T10:00:00Z";
const wedge = { changes: [{ adjusterId: "wedge", amount: degreesToRadians(2) }], states: [], instructions: [] };
const chosen = recorded(document, wedge, NOW);

test("what was set by hand goes on record as the file writes it, and the file takes it", () => {
  expect(chosen.corrections).toEqual([
    {
      state: "chosen",
      chosenAt: NOW,
      basis: [{ driveline: "rear", gauging: 0 }],
      changes: [{ adjuster: "wedge", amount: 2, unit: "deg" }],
      predicted: [],
      instructions: [],
    },
  ]);
  expect(restore(serialise(chosen)).ok).toBe(true);
});

test("work is made, not made after all, and what nobody made can be dropped", () => {
  const made = markedMade(chosen, LATER);
  expect(made.corrections?.[0]).toMatchObject({ state: "made", madeAt: LATER });
  expect(restore(serialise(made)).ok).toBe(true);
  expect(dropped(made, LATER).corrections).toHaveLength(1);
  const again = markedNotMade(made, LATER);
  expect(again.corrections).toEqual(chosen.corrections);
  expect(dropped(again, LATER).corrections).toEqual([]);
});

test("choosing and making ask for no new plan; what was gauged after them does, and so does the shelf", () => {
  expect(groundOf(markedMade(chosen, LATER))).toBe(groundOf(document));
  expect(groundOf({ ...document, title: "Other", updatedAt: LATER })).toBe(groundOf(document));
  expect(groundOf({ ...document, adjusters: [] })).not.toBe(groundOf(document));
  const after = { ...chosen, gauging: [...(chosen.gauging ?? []), ...(chosen.gauging ?? [])] };
  expect(groundOf(after)).not.toBe(groundOf({ ...after, corrections: [] }));
  expect([gaugedSince(chosen, chosen.corrections?.[0] as never), gaugedSince(after, chosen.corrections?.[0] as never)]).toEqual([
    false,
    true,
  ]);
});
