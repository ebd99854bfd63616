import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { restore } from "@halfturn/casefile";
import { type Recording, writeCsv } from "@halfturn/recordings";
import { catalogueOf } from "@halfturn/words";
import { afterAll, beforeAll, expect, it } from "vitest";
import { temporarySpools } from "../files/temporary-spools.js";
import { drive, recordingOf, writeFile } from "../road-test.test-support.js";
import { listenTo } from "./listen-to.js";

let folder: string;
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), "halfturn-follow-"));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const example = restore(readFileSync(new URL("../../../../packages/casefile/examples/two-piece.halfturn.json", import.meta.url), "utf8"));

// Short enough to stay in memory: nothing is opened.
const room = temporarySpools();

const SHAKEN = [
  ["wheel", 1],
  ["wheel", 2],
  ["wheel", 3],
  ["propeller-shaft", 1],
  ["propeller-shaft", 2],
  ["engine", 0.5],
  ["engine", 1],
  ["engine", 3],
] as const;

/** The vibration alone, as a phone records it. */
function withoutSpeed(recording: Recording): Recording {
  const [track] = recording.tracks;
  return { ...recording, tracks: track === undefined ? [] : [{ ...track, channels: track.channels.slice(0, 2) }] };
}

it("names the order that shook or none, whichever it was, from nothing but the vibration and the speeds of the complaint", async () => {
  if (!example.ok) throw new Error("the example is no case");
  let named = 0;
  for (const [part, order] of SHAKEN) {
    const source = { kind: "harmonic", speedPower: 0, phase: 0.4, gains: [0.3, 1], part, order, amplitude: 1 } as const;
    for (const others of [[], [{ ...source, part: "wheel", order: 1, amplitude: 0.2 }]]) {
      const made = drive({ profile: { times: [0, 20, 40], speeds: [22, 25, 23] }, sources: [source, ...others] });
      const file = join(folder, `${part}-${order}-${others.length}.csv`);
      await writeFile(file, writeCsv(withoutSpeed(recordingOf(made)), { separator: ",", decimal: "." }));
      const heard = await listenTo({ recording: file, document: example.case, caseName: "case", gear: "5", room }, catalogueOf("en"), {});
      if (!heard.ok) continue;
      expect(heard.json.findings[0]?.code).toBe("recording.speed-followed");
      const { verdict } = heard.json;
      if (verdict === null) continue;
      expect([file, verdict.part, verdict.order]).toEqual([file, part, order]);
      named++;
    }
  }
  // Those that it leaves open lie beside another part's order, or stand alone where two orders can be.
  expect(named).toBeGreaterThanOrEqual(8);
}, 120_000);
