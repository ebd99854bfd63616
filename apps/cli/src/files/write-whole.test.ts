import { lstatSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, statSync, symlinkSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { writeWhole } from "./write-whole.js";

let folder: string;
let file: string;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), "halfturn-write-"));
  file = join(folder, "case.json");
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

describe("writeWhole", () => {
  it("replaces a file, keeping its permissions", async () => {
    writeFileSync(file, "old", { mode: 0o600 });
    await writeWhole(file, "new", "replace", "a");
    expect([readFileSync(file, "utf8"), statSync(file).mode & 0o777]).toEqual(["new", 0o600]);
    expect(readdirSync(folder)).toEqual(["case.json"]);
  });

  it("keeps an existing file when told so", async () => {
    writeFileSync(file, "old");
    await expect(writeWhole(file, "new", "keep", "a")).rejects.toMatchObject({ code: "EEXIST" });
    expect(readFileSync(file, "utf8")).toBe("old");
    expect(readdirSync(folder)).toEqual(["case.json"]);
  });

  it("writes through a symbolic link", async () => {
    const link = join(folder, "link.json");
    writeFileSync(file, "old");
    symlinkSync(file, link);
    await writeWhole(link, "new", "replace", "a");
    expect([readFileSync(file, "utf8"), lstatSync(link).isSymbolicLink()]).toEqual(["new", true]);
  });

  it("leaves nothing behind when it fails", async () => {
    mkdirSync(file);
    await expect(writeWhole(file, "new", "replace", "a")).rejects.toMatchObject({ code: "EISDIR" });
    writeFileSync(join(folder, ".other.json.a.tmp"), "in the way");
    await expect(writeWhole(join(folder, "other.json"), "new", "keep", "a")).rejects.toMatchObject({ code: "EEXIST" });
    expect(readdirSync(folder)).not.toContain("other.json");
  });
});
