import {
  type Path,
  type PlacedProblem,
  type Problem,
  type ProblemCode,
  type ProblemParams,
  placed,
  sortProblems,
} from "../problems/index.js";
import type { Case } from "../schema/case.js";
import { CASE_FORMAT, CASE_VERSION, caseSchema } from "../schema/case-schema.js";
import { crossProblems } from "./cross-problems.js";
import { withoutEchoes } from "./echoes.js";
import { faceProblems } from "./face-problems.js";
import { parseJson } from "./parse-json.js";
import { jsonKind, shapeProblems } from "./shape-problems.js";
import { MAX_CASE_BYTES, MAX_CASE_LEVELS, nestingLevels, utf8Bytes } from "./size.js";
import { unknownKeyProblems } from "./unknown-keys.js";
import { upgrade } from "./upgrades.js";

export type Restored = { readonly ok: true; readonly case: Case } | { readonly ok: false; readonly problems: readonly Problem[] };

/**
 * A case from the text of its file, or from a value that came some other way (a request, a browser's store).
 * The one way in, for every version: size, JSON, format, version, upgrades, shape, then what the parts say about one another.
 * The case returned is the document itself, with every key it had in the order it had; nothing is filled in.
 */
export function restore(input: unknown): Restored {
  const text = typeof input === "string" ? input.replace(/^\uFEFF/, "") : asText(input);
  if (text === null) return refused([], "not-a-case", { expected: CASE_FORMAT, got: typeof input });
  const bytes = utf8Bytes(text);
  if (bytes > MAX_CASE_BYTES) return refused([], "too-large", { of: "bytes", got: bytes, limit: MAX_CASE_BYTES });
  const levels = nestingLevels(text, MAX_CASE_LEVELS);
  if (levels > MAX_CASE_LEVELS) return refused([], "too-large", { of: "levels", got: levels, limit: MAX_CASE_LEVELS });
  if (text.trim() === "") return refused([], "empty-file", {});
  const parsed = parseJson(text);
  if (!parsed.ok) return refused([], "not-json", { line: parsed.line, column: parsed.column });
  return restoreDocument(parsed.value);
}

function restoreDocument(value: unknown): Restored {
  if (jsonKind(value) !== "object") return refused([], "not-a-case", { expected: CASE_FORMAT, got: jsonKind(value) });
  const document = value as Readonly<Record<string, unknown>>;
  const { format, version } = document;
  if (format !== CASE_FORMAT)
    return refused(["format"], "not-a-case", { expected: CASE_FORMAT, got: typeof format === "string" ? format : jsonKind(format) });
  if (version === undefined) return refused(["version"], "missing", { key: "version" });
  if (typeof version !== "number") {
    return refused(["version"], "wrong-type", { expected: "whole-number", got: jsonKind(version), value: String(version) });
  }
  if (!Number.isInteger(version) || version < 1 || version > CASE_VERSION) {
    return refused(["version"], "wrong-version", { got: version, newest: CASE_VERSION });
  }
  return check(upgrade(document, version));
}

function check(document: Readonly<Record<string, unknown>>): Restored {
  const result = caseSchema.safeParse(document);
  const faces = faceProblems(document);
  const shapes = result.success ? [] : shapeProblems(caseSchema, document, result.error.issues);
  const problems: readonly PlacedProblem[] = [
    ...withoutEchoes([...shapes, ...unknownKeyProblems(caseSchema, document)], faces),
    ...faces,
    // What the parts say about one another can be asked only once each of them is sound.
    ...(result.success ? crossProblems(document as unknown as Case) : []),
  ];
  if (problems.length > 0) return { ok: false, problems: sortProblems(document, problems) };
  return { ok: true, case: document as unknown as Case };
}

function refused<Code extends ProblemCode>(place: Path, code: Code, params: ProblemParams[Code]): Restored {
  return { ok: false, problems: sortProblems(null, [placed(place, code, params)]) };
}

/** A value as JSON text, so that it takes the same way as a file and shares nothing with the caller; null where it cannot be JSON. */
function asText(value: unknown): string | null {
  try {
    return JSON.stringify(value) ?? null;
  } catch {
    return null;
  }
}
