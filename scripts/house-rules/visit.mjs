import ts from "typescript";

/**
 * Calls `see` for every node of the tree, in reading order.
 * @param {ts.Node} node
 * @param {(node: ts.Node) => void} see
 */
export function visit(node, see) {
  see(node);
  ts.forEachChild(node, (child) => visit(child, see));
}

/** @param {ts.Node} node @param {string} object @param {string} name */
export const isMember = (node, object, name) =>
  ts.isPropertyAccessExpression(node) && ts.isIdentifier(node.expression) && node.expression.text === object && node.name.text === name;

/**
 * The leftmost identifier of `a.b.c(d).e`.
 * @param {ts.Expression} node
 * @returns {string | undefined}
 */
export function rootName(node) {
  if (ts.isIdentifier(node)) return node.text;
  if (ts.isPropertyAccessExpression(node) || ts.isCallExpression(node) || ts.isElementAccessExpression(node))
    return rootName(node.expression);
  return undefined;
}
