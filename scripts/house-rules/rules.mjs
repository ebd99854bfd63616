import { degreesInUnitsOnly } from "./degrees.mjs";
import { engineIsDocumented } from "./doc-comments.mjs";
import { fileLength, filePlace } from "./file-shape.mjs";
import { honestTests } from "./honest-tests.mjs";
import { noMachineTraces } from "./no-machine-traces.mjs";
import { failuresAreData, pureEngine } from "./purity.mjs";

/** @type {readonly import("./finding.mjs").HouseRule[]} */
const RULES = [fileLength, filePlace, honestTests, degreesInUnitsOnly, pureEngine, failuresAreData, engineIsDocumented, noMachineTraces];

/**
 * All breaches in a set of files, in the order of the files and their lines.
 * @param {readonly import("./finding.mjs").HouseFile[]} files
 */
export const breachesOf = (files) => files.flatMap((file) => RULES.flatMap((rule) => rule(file)).sort((a, b) => a.line - b.line));
