import ts from "typescript";
import { isEngine, isTest, lineAt } from "./finding.mjs";
import { isMember, visit } from "./visit.mjs";

const OUTSIDE = ["process", "fetch", "performance", "Date", "console", "globalThis", "crypto", "setTimeout", "setInterval", "document"];

/** Whether an identifier reads a global, not a property, a key or a declared name. */
/** @param {ts.Identifier} node */
function isReading(node) {
  const { parent } = node;
  if (ts.isPropertyAccessExpression(parent)) return parent.expression === node;
  if (ts.isQualifiedName(parent) || ts.isTypeReferenceNode(parent)) return false;
  const named = /** @type {{ name?: ts.Node, propertyName?: ts.Node }} */ (/** @type {unknown} */ (parent));
  return named.name !== node && named.propertyName !== node;
}

/** @type {import("./finding.mjs").HouseRule} */
export function pureEngine(source) {
  const { file, ast } = source;
  if (!ast || !isEngine(file)) return [];
  /** @type {import("./finding.mjs").Breach[]} */
  const found = [];
  visit(ast, (node) => {
    const name =
      ts.isIdentifier(node) && OUTSIDE.includes(node.text) && isReading(node)
        ? node.text
        : isMember(node, "Math", "random")
          ? "Math.random"
          : undefined;
    if (name === undefined) return;
    const remedy = `the engine has no clock, chance or outside world (${name}): take the value as a parameter`;
    found.push({ file, line: lineAt(source, node.getStart(ast)), rule: "engine-purity", remedy });
  });
  return found;
}

/** @param {ts.Node} node @param {string} text */
function saysProgrammerError(node, text) {
  /** @type {ts.Node | undefined} */
  let place = node;
  while (place) {
    const comments = text.slice(place.getFullStart(), place.getStart());
    if (/programmer error|@throws/i.test(comments)) return true;
    place = place.parent;
  }
  return false;
}

/** @type {import("./finding.mjs").HouseRule} */
export function failuresAreData(source) {
  const { file, text, ast } = source;
  if (!ast || !isEngine(file) || isTest(file)) return [];
  /** @type {import("./finding.mjs").Breach[]} */
  const found = [];
  visit(ast, (node) => {
    if (!ts.isThrowStatement(node) || !ts.isNewExpression(node.expression)) return;
    const thrown = node.expression.expression;
    if (!ts.isIdentifier(thrown) || thrown.text !== "Error" || saysProgrammerError(node, text)) return;
    const remedy = "return { code, path, params }; only a programmer error may throw, and a comment above it says so";
    found.push({ file, line: lineAt(source, node.getStart(ast)), rule: "bare-throw", remedy });
  });
  return found;
}
