import { readFileSync } from "node:fs";
import { correctionBasis, examples, restore } from "@halfturn/casefile";
import { DEFAULT_LIMITS } from "@halfturn/engine/limits";
import { catalogueOf } from "@halfturn/words";
import { expect, test } from "vitest";
import type { CliContext } from "../program/context.js";
import { searchPlans } from "./search-plans.js";

const example = restore(readFileSync(new URL(examples.find(({ name }) => name === "two-piece")?.url ?? ""), "utf8"));
if (!example.ok) throw new Error("the example restores");
const { input } = correctionBasis(example.case, { defaults: DEFAULT_LIMITS, draws: 100, seed: 1 });
const OPTIONS = { maxChanges: 1, count: 1, rankDraws: 50, detailDraws: 100 };

/** A context of which the search sees its stream, its words, and a way to be stopped. */
function contextWith(isTTY: boolean, stopAtOnce = false) {
  const written: string[] = [];
  let heard = 0;
  const context = {
    process: { stderr: { isTTY, write: (text: string) => written.push(text) > 0 } },
    words: catalogueOf("en"),
    onStop: (stop: () => void) => {
      heard += 1;
      if (stopAtOnce) stop();
      return () => {
        heard -= 1;
      };
    },
  } as unknown as CliContext;
  return { context, written, listening: () => heard };
}

test("a terminal sees the progress on one line, which is gone at the end", async () => {
  const { context, written, listening } = contextWith(true);
  const found = await searchPlans(input, OPTIONS, { quiet: false }, context);
  expect(found).toMatchObject({ ok: true });
  expect(written.at(-1)).toBe("\r\u001B[K");
  const lines = written.slice(0, -1);
  expect(lines.length).toBeGreaterThan(0);
  for (const line of lines) expect(line).toMatch(/^\rLooking through the stock: \d+%$/);
  expect(new Set(lines).size).toBe(lines.length);
  expect(listening()).toBe(0);
});

test.each([
  ["a file or a pipe", false, false],
  ["a reader of JSON", true, true],
])("%s sees none of it", async (_, isTTY, quiet) => {
  const { context, written } = contextWith(isTTY, false);
  await searchPlans(input, OPTIONS, { quiet }, context);
  expect(written).toEqual([]);
});

test("asked to stop, it stops with nothing but that, and listens no longer", async () => {
  const { context, listening } = contextWith(false, true);
  expect(await searchPlans(input, OPTIONS, { quiet: false }, context)).toBe("stopped");
  expect(listening()).toBe(0);
});
