import { createHash } from "node:crypto";
import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { restore } from "./restore/restore.js";
import { CASE_VERSION } from "./schema/case-schema.js";
import { serialise } from "./serialise/serialise.js";

const kept = new URL("../../../fixtures/formats/", import.meta.url);
interface Manifest {
  readonly version: number;
  readonly sha256: Readonly<Record<string, string>>;
}

test("every version up to the newest has its kept files", () => {
  const folders = Array.from({ length: CASE_VERSION }, (_, k) => `v${k + 1}`);
  expect(readdirSync(kept).sort()).toEqual(folders);
});

describe.each(readdirSync(kept))("files written in version %s", (version) => {
  const folder = new URL(`${version}/`, kept);
  const { sha256 } = JSON.parse(readFileSync(new URL("manifest.json", folder), "utf8")) as Manifest;

  test("all that was kept is there and nothing else", () => {
    expect(readdirSync(folder).sort()).toEqual([...Object.keys(sha256), "manifest.json"].sort());
  });

  test.each(Object.entries(sha256))("%s is what was written then, and still a case", (file, digest) => {
    const text = readFileSync(new URL(file, folder), "utf8");
    expect(createHash("sha256").update(text).digest("hex")).toBe(digest);
    const restored = restore(text);
    expect(restored.ok ? [] : restored.problems).toEqual([]);
    if (restored.ok && version === `v${CASE_VERSION}`) expect(serialise(restored.case)).toBe(text);
  });
});
