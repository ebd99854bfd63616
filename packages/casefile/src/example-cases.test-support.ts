import { readFileSync } from "node:fs";
import { examples } from "./examples.js";
import { restore } from "./restore/restore.js";
import type { Case } from "./schema/case.js";

/** For tests: the example of a name, restored. */
export function exampleCase(name: string): Case {
  const restored = restore(exampleText(name));
  if (!restored.ok) throw new Error(`${name}: ${JSON.stringify(restored.problems)}`);
  return restored.case;
}

export function exampleText(name: string): string {
  const example = examples.find((candidate) => candidate.name === name);
  if (!example) throw new Error(`no example ${name}`);
  return readFileSync(new URL(example.url), "utf8");
}

export const exampleNames: readonly string[] = examples.map(({ name }) => name);
