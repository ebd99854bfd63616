import ts from "typescript";

/**
 * A file with its syntax tree, where it has one.
 * @param {string} file
 * @param {string} text
 * @returns {import("./finding.mjs").HouseFile}
 */
export const parse = (file, text) =>
  /\.(ts|tsx|mts|mjs|js)$/.test(file) ? { file, text, ast: ts.createSourceFile(file, text, ts.ScriptTarget.Latest, true) } : { file, text };
