import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";

/** The root of the repository, wherever it was cloned and wherever the command was started. */
export const root = dirname(dirname(fileURLToPath(import.meta.url)));

/** @param {string[]} parts */
export const inRoot = (...parts) => join(root, ...parts);

export const cliBundle = inRoot("apps", "cli", "dist", "halfturn.js");
export const cliEntry = inRoot("apps", "cli", "src", "main.ts");
