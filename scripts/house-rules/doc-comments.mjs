import ts from "typescript";
import { isEngine, isTest, lineAt } from "./finding.mjs";

/** @param {ts.Statement} statement */
const isExported = (statement) =>
  ts.canHaveModifiers(statement) && (ts.getModifiers(statement)?.some(({ kind }) => kind === ts.SyntaxKind.ExportKeyword) ?? false);

/** The name of the function a statement exports, if it exports one. */
/** @param {ts.Statement} statement */
function exportedFunction(statement) {
  if (!isExported(statement)) return undefined;
  if (ts.isFunctionDeclaration(statement)) return statement.name?.text;
  if (!ts.isVariableStatement(statement)) return undefined;
  const declaration = statement.declarationList.declarations.find(
    ({ initializer }) => initializer && (ts.isArrowFunction(initializer) || ts.isFunctionExpression(initializer)),
  );
  return declaration && ts.isIdentifier(declaration.name) ? declaration.name.text : undefined;
}

/** @type {import("./finding.mjs").HouseRule} */
export function engineIsDocumented(source) {
  const { file, text, ast } = source;
  if (!ast || !isEngine(file) || isTest(file)) return [];
  /** @type {Set<string>} Overloads share the comment of the first. */
  const documented = new Set();
  return ast.statements.flatMap((statement) => {
    const name = exportedFunction(statement);
    if (name === undefined || documented.has(name)) return [];
    if (text.slice(statement.getFullStart(), statement.getStart(ast)).includes("/**")) {
      documented.add(name);
      return [];
    }
    const remedy = `say above ${name} what it returns: shapes, units, sign, range, errors, source`;
    return [{ file, line: lineAt(source, statement.getStart(ast)), rule: "doc-comment", remedy }];
  });
}
