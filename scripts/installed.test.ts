import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { installMatches, isInstalled, markInstalled } from "./installed.mjs";

const zod = { version: "4.6.7", integrity: "sha512-a" };

describe("installMatches", () => {
  it.each([
    ["the same packages", { "node_modules/zod": zod }, true],
    ["nothing", {}, false],
    ["another version", { "node_modules/zod": { ...zod, version: "4.6.6" } }, false],
    ["other bytes", { "node_modules/zod": { ...zod, integrity: "sha512-b" } }, false],
  ])("compares the lock with %s installed", (_, installed, expected) => {
    expect(installMatches({ "": { version: "0.1.0" }, "node_modules/zod": zod }, installed)).toBe(expected);
  });

  it("does not miss the packages of other platforms", () => {
    expect(installMatches({ "node_modules/esbuild-win": { ...zod, optional: true } }, {})).toBe(true);
  });
});

describe("isInstalled", () => {
  let clone: string;
  const lock = (version: string) => JSON.stringify({ packages: { "node_modules/zod": { ...zod, version } } });
  beforeEach(() => {
    clone = mkdtempSync(join(tmpdir(), "halfturn-installed-"));
    writeFileSync(join(clone, "package-lock.json"), lock("4.6.7"));
  });
  afterEach(() => rmSync(clone, { recursive: true, force: true }));

  it("asks for an install on a clean clone", () => {
    expect(isInstalled(clone)).toBe(false);
  });

  it("is content after an install, until the lock file changes", () => {
    mkdirSync(join(clone, "node_modules"));
    writeFileSync(join(clone, "node_modules/.package-lock.json"), lock("4.6.7"));
    markInstalled(clone);
    expect(isInstalled(clone)).toBe(true);
    writeFileSync(join(clone, "package-lock.json"), lock("4.6.8"));
    expect(isInstalled(clone)).toBe(false);
  });

  it("accepts what a plain npm install left", () => {
    mkdirSync(join(clone, "node_modules"));
    writeFileSync(join(clone, "node_modules/.package-lock.json"), lock("4.6.7"));
    expect(isInstalled(clone)).toBe(true);
  });
});
