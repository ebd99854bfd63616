// How long a shop of a hundred thousand cases makes people wait. `npm run bench:store`; exits 1 where a question takes too long.
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { newCase } from "@halfturn/casefile";
import { type CaseStore, openStore, type StoreLocation } from "@halfturn/store";
import { EVERYWHERE, fill, onlyIn } from "./many-cases.js";

const CASES = 100_000;
const ASKED = 400;
const SAVES = 500;
/** Of a list or a search, in 99 of 100: no screen waits for it. */
const BUDGET_MS = 50;

const [, , address = ""] = process.argv;
const folder = mkdtempSync(join(tmpdir(), "halfturn-bench-"));
try {
  const slow = [
    ...(await measure("SQLite", { file: join(folder, "bench.sqlite") })),
    ...(address === "" ? [] : await measure("PostgreSQL", { address })),
  ];
  for (const line of slow) console.error(`Over ${BUDGET_MS} ms: ${line}`);
  process.exitCode = slow.length > 0 ? 1 : 0;
} finally {
  rmSync(folder, { recursive: true });
}

/** Prints a table, and gives the questions that are over the budget. */
async function measure(engine: string, location: StoreLocation): Promise<readonly string[]> {
  const store = await openStore(location);
  const started = performance.now();
  const words = await fill(store, CASES);
  console.log(`\n${engine}, ${CASES} cases (filled in ${((performance.now() - started) / 1000).toFixed(0)} s)`);
  const slow: string[] = [];
  for (const [name, ask] of questions(store, words)) {
    const times = await timed(ASKED, ask);
    console.log(line(name, times));
    if (percentile(times, 0.99) > BUDGET_MS) slow.push(`${engine}, ${name}`);
  }
  const begun = performance.now();
  const saves = await timed(SAVES, (k) =>
    store.create(newCase({ id: `new-${k}`, title: "New", layout: "two-piece", createdAt: "2026-01-01" }), {
      savedBy: "bench",
      savedAt: "2026-01-01T00:00:00Z",
    }),
  );
  console.log(line("save, on the disk", saves));
  console.log(`  ${((1000 * SAVES) / (performance.now() - begun)).toFixed(0)} saves a second, one after the other`);
  await store.close();
  return slow;
}

function questions(store: CaseStore, words: readonly string[]): readonly (readonly [string, (k: number) => Promise<unknown>])[] {
  const ask = (asked: string, after: string | null = null) => store.list({ words: asked, limit: 50, after, putAway: false });
  const word = (k: number): string => words[k % words.length] ?? "";
  const deep = (k: number): string => String(1 + ((k * 241) % CASES));
  return [
    ["first page", () => ask("")],
    ["a page far down", (k) => ask("", deep(k))],
    ["a word of every case", () => ask(EVERYWHERE)],
    ["a word of every case, far down", (k) => ask(EVERYWHERE, deep(k))],
    ["a letter", (k) => ask(word(k).slice(0, 1))],
    ["two common words", (k) => ask(`${word(k)} ${word(k * 7 + 1)}`)],
    ["a word of one case", (k) => ask(onlyIn((k * 241) % CASES))],
    ["a common and a rare word", (k) => ask(`${EVERYWHERE} ${onlyIn((k * 241) % CASES)}`)],
    ["the beginning of many rare words", (k) => ask(onlyIn(k % 100))],
    ["a word of no case", (k) => ask(`none${k}`)],
    ["common words that no case has together", (k) => ask(`${EVERYWHERE} ${word(k)} none${k}`)],
    ["a case", (k) => store.read(`case-${(k * 241) % CASES}`)],
  ];
}

async function timed(count: number, work: (k: number) => Promise<unknown>): Promise<readonly number[]> {
  const times: number[] = [];
  for (let k = 0; k < count; k++) {
    const started = performance.now();
    await work(k);
    times.push(performance.now() - started);
  }
  return times.sort((a, b) => a - b);
}

function percentile(sorted: readonly number[], share: number): number {
  return sorted[Math.min(sorted.length - 1, Math.floor(sorted.length * share))] ?? 0;
}

function line(name: string, times: readonly number[]): string {
  const shown = [0.5, 0.99].map((share) => percentile(times, share).toFixed(2).padStart(8)).join("");
  return `  ${name.padEnd(42)} ${shown} ms (half, 99 of 100)`;
}
