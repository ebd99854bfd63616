import { readFileSync } from "node:fs";
import { examples, restore } from "@halfturn/casefile";
import { describe, expect, it } from "vitest";
import { reportedGaugings } from "./reported-gaugings.js";

// biome-ignore lint/suspicious/noExplicitAny: a case is changed before it is restored
function reported(name: string, change: (document: any) => void = () => undefined) {
  const document = JSON.parse(readFileSync(new URL(examples.find((example) => example.name === name)?.url ?? ""), "utf8"));
  change(document);
  const restored = restore(document);
  if (!restored.ok) throw new Error(JSON.stringify(restored.problems));
  return reportedGaugings(restored.case, { draws: 100, seed: 1, accepted: [] }).map(({ gauging, analysis }) => [
    analysis.drivelineId,
    gauging,
  ]);
}

describe("gaugings of a report", () => {
  it("are the last as found and the last after correction of each driveline", () => {
    expect(reported("one-piece")).toEqual([
      ["rear", 1],
      ["rear", 2],
    ]);
    expect(reported("four-wheel-drive")).toEqual([
      ["rear", 0],
      ["front", 1],
    ]);
  });

  it("name a driveline that was never gauged", () => {
    expect(reported("four-wheel-drive", (document) => document.gauging.pop())).toEqual([
      ["rear", 0],
      ["front", null],
    ]);
  });
});
