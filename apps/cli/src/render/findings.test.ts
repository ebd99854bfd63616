import { readFileSync } from "node:fs";
import { type Case, examples, restore } from "@halfturn/casefile";
import type { Finding } from "@halfturn/engine/findings";
import { catalogueOf, LANGUAGES } from "@halfturn/words";
import { describe, expect, it } from "vitest";
import { analyseCase } from "../analysis/analyse-case.js";
import { findingLines, gravestFirst } from "./findings.js";
import { paintOf } from "./paint.js";

// biome-ignore lint/suspicious/noExplicitAny: readings of any form are changed
type Change = (reading: any, gauging: any) => void;

/** Slips and gaps as they happen, so that findings of many kinds come up. */
const CHANGES: readonly Change[] = [
  () => undefined,
  (reading) => Object.assign(reading, { deg: reading.deg + 5 }),
  (reading) => Object.assign(reading, { lower: reading.lower === "driven-end" ? "source-end" : "driven-end" }),
  (reading) => Object.assign(reading, { side: reading.side === "left" ? "right" : "left" }),
  (reading, gauging) => gauging.readings.splice(gauging.readings.indexOf(reading), 1),
  (_, gauging) => Object.assign(gauging.state, { wheels: "hanging", rideHeight: "drooped" }),
  (_, gauging) => delete gauging.gauge.zeroCheck,
  (reading, gauging) => gauging.readings.push({ ...reading, deg: reading.deg + 1 }),
];

function variants(): readonly Case[] {
  return examples.flatMap(({ url }) => {
    const text = readFileSync(new URL(url), "utf8");
    const count = (JSON.parse(text) as Case).gauging?.at(-1)?.readings.length ?? 0;
    return CHANGES.flatMap((change) =>
      Array.from({ length: count }, (_, k) => {
        const document = JSON.parse(text);
        const gauging = document.gauging.at(-1);
        change(gauging.readings[k], gauging);
        const restored = restore(document);
        return restored.ok ? [restored.case] : [];
      }).flat(),
    );
  });
}

describe("findings of the engine", () => {
  const found = variants().flatMap((document) =>
    analyseCase(document, {}, { draws: 100, seed: 1, accepted: ["gauging.wheels-hanging"] }).map(({ analysis }) => ({
      document,
      analysis,
    })),
  );

  it("come up in many kinds", () => {
    const codes = new Set(found.flatMap(({ analysis }) => analysis.findings.map(({ code }) => code)));
    expect(codes.size).toBeGreaterThan(20);
  });

  it.each(LANGUAGES)("are said in %s with every number and name that the sentence asks for", (language) => {
    const view = { words: catalogueOf(language), paint: paintOf(false), width: 1000 };
    const gaps = found.flatMap(({ document, analysis }) =>
      findingLines(analysis.findings, document, view).filter((line) => /…|undefined|NaN/.test(line)),
    );
    expect([...new Set(gaps)]).toEqual([]);
  });

  it.each(LANGUAGES)("name readings in %s by what was read, and leave the path to the line below the title", (language) => {
    const view = { words: catalogueOf(language), paint: paintOf(false), width: 1000 };
    const spelled = found.flatMap(({ document, analysis }) =>
      findingLines(analysis.findings, document, view).filter(
        (line) => /\w\[\d+\]/.test(line) && !/^ {4}[a-z-]+\.[a-z-]+ \S+ \S+$/.test(line),
      ),
    );
    expect([...new Set(spelled)]).toEqual([]);
  });

  it("stand in order of gravity", () => {
    const finding = (severity: Finding["severity"], path: string): Finding => ({ code: "gauging.laden", severity, path, params: {} });
    const mixed = [finding("note", "a"), finding("stop", "b"), finding("warn", "c"), finding("stop", "d")];
    expect(gravestFirst(mixed).map(({ path }) => path)).toEqual(["b", "d", "c", "a"]);
  });
});
