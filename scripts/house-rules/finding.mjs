/**
 * One breach of a house rule.
 * @typedef {{ file: string, line: number, rule: string, remedy: string }} Breach
 */

/**
 * A file as the rules see it. `ast` is absent for anything that is not TypeScript or JavaScript.
 * @typedef {{ file: string, text: string, ast?: import("typescript").SourceFile }} HouseFile
 */

/**
 * A rule looks at one file and names what is wrong.
 * @typedef {(file: HouseFile) => Breach[]} HouseRule
 */

/** @param {HouseFile} file @param {number} position */
export const lineAt = ({ text }, position) => text.slice(0, position).split("\n").length;

/** @param {string} file */
export const isTest = (file) => /\.(test|test-support)\.ts$/.test(file);

/** @param {string} file */
export const isEngine = (file) => file.startsWith("packages/engine/src/");
