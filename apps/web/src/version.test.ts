import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { VERSION } from "./version.js";

test("the version that a report bears is that of the package", () => {
  const { version } = JSON.parse(readFileSync(new URL("../package.json", import.meta.url), "utf8")) as { version: string };
  expect(VERSION).toBe(version);
});
