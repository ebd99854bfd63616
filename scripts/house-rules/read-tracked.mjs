import { execFileSync } from "node:child_process";
import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { parse } from "./parse.mjs";

const BINARY = /\.(png|pdf|wav|ttf|otf|woff2?|jpg|ico|gz|zip)$/;

/**
 * Every text file that git knows under `root`, and those it would take up.
 * @param {string} root
 * @returns {import("./finding.mjs").HouseFile[]}
 */
export function readTracked(root) {
  const list = execFileSync("git", ["ls-files", "-z", "--cached", "--others", "--exclude-standard"], { cwd: root, encoding: "utf8" });
  return list
    .split("\0")
    .filter((file) => file !== "" && !BINARY.test(file) && existsSync(join(root, file)))
    .map((file) => parse(file, readFileSync(join(root, file), "utf8")));
}
