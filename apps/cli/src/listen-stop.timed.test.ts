import { writeCsv } from "@halfturn/recordings";
import { afterAll, beforeAll, expect, it } from "vitest";
import { buildProgram, type Program } from "./program.test-support.js";
import { drive, recordingOf, writeFile } from "./road-test.test-support.js";

let program: Program;
beforeAll(async () => {
  program = await buildProgram();
  program.example("two-piece", "case.json");
  // Half an hour: some fifty megabytes to read, and seconds of work on them.
  const long = recordingOf(drive({ profile: { times: [0, 900, 1800], speeds: [20, 26, 22] } }));
  await writeFile(program.path("long.csv"), writeCsv(long, { separator: ",", decimal: "." }));
}, 60_000);
afterAll(() => program.remove());

const LISTEN = ["listen", "long.csv", "--case", "case.json", "--gear", "5"];

/** Agreed: long work stops within 100 ms. What the machine takes to end the process and to tell of it comes on top. */
const STOPPED_WITHIN_MS = 100;
const ENDING_MS = 150;
/** What the program takes to say its version on a quiet machine; on a busy one everything takes as much longer as this does. */
const USUAL_START_MS = 250;

async function busyness(): Promise<number> {
  const started = performance.now();
  await program.run(["--version"]);
  return Math.max(1, (performance.now() - started) / USUAL_START_MS);
}

/** How long it takes when nobody stops it: a fixed time would be after the end on a fast machine. */
async function wholeTime(): Promise<number> {
  const started = performance.now();
  const { code } = await program.run(LISTEN);
  expect(code).toBe(0);
  return performance.now() - started;
}

it.each([
  ["while it reads", 0.2],
  ["while it works", 0.7],
])("stops %s within a tenth of a second when interrupted, and writes nothing", async (_, share) => {
  const busy = await busyness();
  const whole = await wholeTime();
  const child = program.start(LISTEN);
  let said = "";
  for (const stream of [child.stdout, child.stderr])
    stream.setEncoding("utf8").on("data", (text: string) => {
      said += text;
    });
  const closed = new Promise<number | null>((resolve) => child.on("close", resolve));
  await new Promise((resolve) => setTimeout(resolve, share * whole));
  const asked = performance.now();
  child.kill("SIGINT");
  const code = await closed;
  const took = performance.now() - asked;
  expect([code, said]).toEqual([130, "Stopped by hand. Nothing was written.\n"]);
  expect(took).toBeLessThan((STOPPED_WITHIN_MS + ENDING_MS) * busy);
});
