import { basename, dirname } from "node:path";

const LIMIT = 400;
const DEPTH = 3;

/** Tables that are read as data, one entry a line: splitting them would hide the order they are looked up in. */
const CATALOGUES = [/^packages\/words\/src\/[a-z]{2}\//, /\.(literature|golden)\.test\.ts$/, /-(table|data|catalogue)\.ts$/];

const KEBAB = /^[a-z0-9]+(-[a-z0-9]+)*(\.[a-z0-9-]+)*\.(ts|tsx|mts|mjs)$/;

/** @type {import("./finding.mjs").HouseRule} */
export function fileLength({ file, text, ast }) {
  if (!ast || CATALOGUES.some((pattern) => pattern.test(file))) return [];
  const lines = text.trimEnd().split("\n").length;
  if (lines <= LIMIT) return [];
  return [
    {
      file,
      line: LIMIT + 1,
      rule: "file-length",
      remedy: `${lines} lines; split it by idea (at most ${LIMIT}), or name it *-table.ts if it is data`,
    },
  ];
}

/** @type {import("./finding.mjs").HouseRule} */
export function filePlace({ file, ast }) {
  if (!ast || file.startsWith(".")) return [];
  const found = [];
  if (!KEBAB.test(basename(file)))
    found.push({ file, line: 1, rule: "file-name", remedy: "name files in kebab-case after their main export" });
  const [, below] = dirname(file).split(/(?:^|\/)src\//);
  if (below !== undefined && below.split("/").length > DEPTH)
    found.push({
      file,
      line: 1,
      rule: "folder-depth",
      remedy: `folders go at most ${DEPTH} deep under src; move it up or give the subject its own folder`,
    });
  return found;
}
