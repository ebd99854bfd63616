import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { expect, test } from "vitest";

const SOURCES = fileURLToPath(new URL("..", import.meta.url));
/** What fills a gap in a sentence, or a number, and its unit behind a space at which a line may end. Paths of drawings have such numbers, too. */
const BREAKABLE = /(?:\}|\d) (?:%|(?:km\/h|mph|rpm|Hz|dB|MB|m\/s²)(?![\w/²]))|\} (?:mm|s)(?![\w/])/;
/** What is read, and never shown. */
const READ = /over === usualOver/;

const lines = readdirSync(SOURCES, { recursive: true, encoding: "utf8" })
  .filter((file) => /\.tsx?$/.test(file) && !/\.test\.|test-support/.test(file))
  .flatMap((file) =>
    readFileSync(join(SOURCES, file), "utf8")
      .split("\n")
      .map((line, k) => `${file}:${k + 1} ${line.trim()}`),
  );

test("no sentence of the app parts a number from its unit", () => {
  expect(lines.length).toBeGreaterThan(5000);
  expect(lines.filter((line) => !/ (?:\/\/|\/?\*)/.test(line) && !READ.test(line) && BREAKABLE.test(line))).toEqual([]);
});
