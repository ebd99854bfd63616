import { lineAt } from "./finding.mjs";

// Written so that this file does not breach its own rule.
const MACHINE_PATH = /(?<![\w.~@:-])\/(?:work|tmp|home|root|Users)\/[\w.-]+|\b[A-Z]:\\\\?Users\\/g;
const REGISTRY_HOST = /\bregistry\.(?:npmjs|yarnpkg|npmmirror)\.[a-z]+|"resolved": "[a-z+]+:/g;
const UNFINISHED = /\b(?:TO[D]O|FIX[M]E|XX[X])\b/g;

/** Other people's text, kept as it came. */
const VERBATIM = ["LICENSE"];

/** @type {import("./finding.mjs").HouseRule} */
export function noMachineTraces(source) {
  const { file, text } = source;
  if (VERBATIM.includes(file)) return [];
  /** @param {RegExp} pattern @param {string} rule @param {(hit: string) => string} remedy */
  const all = (pattern, rule, remedy) =>
    [...text.matchAll(pattern)].map((hit) => ({ file, line: lineAt(source, hit.index), rule, remedy: remedy(hit[0]) }));
  return [
    ...all(
      MACHINE_PATH,
      "machine-path",
      (hit) => `${hit} exists on one machine only: use a path relative to the repository or os.tmpdir()`,
    ),
    ...all(
      REGISTRY_HOST,
      "registry-host",
      () => "the lock file and the sources name no registry host: set omit-lockfile-registry-resolved and reinstall",
    ),
    ...all(UNFINISHED, "unfinished", (hit) => `finish it, or take it out: ${hit} is not a plan`),
  ];
}
