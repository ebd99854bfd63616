import ts from "typescript";
import { lineAt } from "./finding.mjs";
import { isMember, rootName, visit } from "./visit.mjs";

const RUNNERS = ["it", "test", "describe", "suite", "bench", "context", "ctx", "task"];
const EXCUSES = ["skip", "only", "todo", "skipIf", "runIf", "fails"];
const SHORT_EXCUSES = ["xit", "xtest", "xdescribe", "fit", "fdescribe"];

/** @type {import("./finding.mjs").HouseRule} */
export function honestTests(source) {
  const { file, ast } = source;
  if (!ast || !/\.test\.[a-z]+$/.test(file)) return [];
  /** @type {import("./finding.mjs").Breach[]} */
  const found = [];
  visit(ast, (node) => {
    const line = () => lineAt(source, node.getStart(ast));
    if (ts.isPropertyAccessExpression(node)) {
      const name = node.name.text;
      if (name === "toBeCloseTo")
        found.push({ file, line: line(), rule: "to-be-close-to", remedy: "compare |difference| with a named, justified tolerance" });
      if (EXCUSES.includes(name) && RUNNERS.includes(rootName(node.expression) ?? ""))
        found.push({ file, line: line(), rule: "test-not-run", remedy: `every test runs: repair or delete it instead of .${name}` });
    }
    if (ts.isCallExpression(node) && ts.isIdentifier(node.expression) && SHORT_EXCUSES.includes(node.expression.text))
      found.push({
        file,
        line: line(),
        rule: "test-not-run",
        remedy: `every test runs: repair or delete it instead of ${node.expression.text}`,
      });
    if (isMember(node, "Math", "random"))
      found.push({
        file,
        line: line(),
        rule: "test-random",
        remedy: "a test must fail the same way twice: use fast-check or a seeded generator",
      });
    // Unit tests share their processes, and with them what others have loaded.
    if (isMember(node, "vi", "mock") && !source.text.includes("vi.resetModules()"))
      found.push({
        file,
        line: line(),
        rule: "mock-unseen",
        remedy: "call vi.resetModules() in vi.hoisted first: another test file may have loaded what uses the true module",
      });
  });
  return found;
}
