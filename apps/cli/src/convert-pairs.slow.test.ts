import { readFileSync, writeFileSync } from "node:fs";
import { writeCsv } from "@halfturn/recordings";
import { afterAll, beforeAll, expect, it } from "vitest";
import { contentOfFile, conversion } from "./convert.test-support.js";
import { buildProgram, type Program } from "./program.test-support.js";
import { drive, firstTrackOf, recordingOf, writeFile } from "./road-test.test-support.js";

/** Half a step of 24 bits at a full scale of 20 and 1 at most, and thirteen digits of text. */
const VALUE = 20 / 2 ** 24;
/** Seven digits of a step, over three thousand of them; stamps of a table are doubles. */
const TIME = 1e-6;

const FORMS = [
  ["wav", []],
  ["wav", ["--encoding", "float64"]],
  ["csv", []],
  ["csv", ["--decimal", "comma"]],
  ["tsv", []],
  ["uff", []],
  ["uff", ["--encoding", "binary"]],
] as const;
const PAIRS = FORMS.flatMap(([first, how], i) =>
  FORMS.map(([second, then]) => [`${first} ${how}`, `${second} ${then}`, `${i}.${first}`, second, then] as const),
);

let program: Program;
beforeAll(async () => {
  program = await buildProgram();
  program.example("two-piece", "case.json");
  const made = recordingOf(drive({ profile: { times: [0, 3, 6], speeds: [20, 26, 22] } }));
  await writeFile(program.path("drive.csv"), writeCsv(firstTrackOf(made), { separator: ",", decimal: "." }));
  const recordings: unknown[] = [];
  for (const [i, [kind, how]] of FORMS.entries())
    recordings.push((await conversion(program, ["drive.csv", "-o", `${i}.${kind}`, ...how])).recording);
  const known = readFileSync(program.path("case.json"), "utf8").replace("{", `{ "recordings": ${JSON.stringify(recordings)},`);
  writeFileSync(program.path("known.json"), known);
}, 120_000);
afterAll(() => program.remove());

const far = (a: readonly number[], b: readonly number[] = []): number => Math.max(...a.map((x, n) => Math.abs(x - (b[n] as number))));

it.each(PAIRS)("a recording keeps samples, times, names and quantities from %s to %s", async (_from, _to, from, kind, how) => {
  const to = `to-${from}.${kind}`;
  const { recording } = await conversion(program, [from, "-o", to, "--case", "known.json", ...how]);
  const before = await contentOfFile(program.path("drive.csv"), []);
  const after = await contentOfFile(program.path(to), recording.channels ?? []);
  expect(after.map(({ name, quantity }) => [name, quantity])).toEqual(before.map(({ name, quantity }) => [name, quantity]));
  for (const [k, { times, values }] of before.entries()) {
    expect(after[k]?.values.length).toBe(values.length);
    expect(far(values, after[k]?.values)).toBeLessThan(VALUE);
    expect(far(times, after[k]?.times)).toBeLessThan(TIME);
  }
});
