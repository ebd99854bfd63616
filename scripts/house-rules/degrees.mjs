import ts from "typescript";
import { lineAt } from "./finding.mjs";
import { isMember, visit } from "./visit.mjs";

const UNITS = "packages/engine/src/units/";
// The two conversion factors written out as numbers.
const FACTOR = /^(0?\.01745329|57\.2957795)/;

/** @param {ts.Expression} node @returns {ts.Expression} */
const bare = (node) => (ts.isParenthesizedExpression(node) ? bare(node.expression) : node);

/**
 * The factors of a product or quotient, flattened, each with its side of the line.
 * @param {ts.Expression} expression
 * @param {boolean} over
 * @returns {{ node: ts.Expression, over: boolean }[]}
 */
function factors(expression, over = true) {
  const node = bare(expression);
  if (!ts.isBinaryExpression(node)) return [{ node, over }];
  const kind = node.operatorToken.kind;
  if (kind === ts.SyntaxKind.AsteriskToken) return [...factors(node.left, over), ...factors(node.right, over)];
  if (kind === ts.SyntaxKind.SlashToken) return [...factors(node.left, over), ...factors(node.right, !over)];
  return [{ node, over }];
}

/** @param {ts.Expression} node */
const isHalfTurn = (node) => ts.isNumericLiteral(node) && (node.text === "180" || node.text === "360");

/** @type {import("./finding.mjs").HouseRule} */
export function degreesInUnitsOnly(source) {
  const { file, ast } = source;
  if (!ast || file.startsWith(UNITS)) return [];
  /** @type {import("./finding.mjs").Breach[]} */
  const found = [];
  /** @param {ts.Node} node */
  const breach = (node) =>
    found.push({
      file,
      line: lineAt(source, node.getStart(ast)),
      rule: "degrees-outside-units",
      remedy: "convert with degreesToRadians or radiansToDegrees of @halfturn/engine/units",
    });
  visit(ast, (node) => {
    if (ts.isNumericLiteral(node) && FACTOR.test(node.getText(ast))) breach(node);
    if (!ts.isBinaryExpression(node) || node.operatorToken.kind !== ts.SyntaxKind.SlashToken) return;
    const parts = factors(node);
    const turn = parts.find((part) => isHalfTurn(part.node));
    const pi = parts.find((part) => isMember(part.node, "Math", "PI"));
    if (turn && pi && turn.over !== pi.over) breach(node);
  });
  // The outer quotient of a nested one repeats its inner breach; one line is told once.
  return found.filter((one, index) => found.findIndex((other) => other.line === one.line) === index);
}
