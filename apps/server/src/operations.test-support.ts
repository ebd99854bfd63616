import fc from "fast-check";

type Json = Readonly<Record<string, unknown>>;

export interface Parameter {
  readonly name: string;
  readonly in: "path" | "query" | "header";
  readonly required?: boolean;
  readonly schema: Json;
}

/** One operation of an OpenAPI document. */
export interface Operation {
  readonly method: string;
  readonly path: string;
  readonly parameters: readonly Parameter[];
  readonly takesBody: boolean;
  readonly statuses: readonly number[];
}

interface OpenApiOperation {
  readonly parameters?: readonly Parameter[];
  readonly requestBody?: unknown;
  readonly responses: Json;
}

export interface OpenApiDocument {
  readonly openapi: string;
  readonly paths: Readonly<Record<string, Readonly<Record<string, OpenApiOperation>>>>;
}

export const operationsOf = ({ paths }: OpenApiDocument): readonly Operation[] =>
  Object.entries(paths).flatMap(([path, methods]) =>
    Object.entries(methods).map(([method, operation]) => ({
      method: method.toUpperCase(),
      path,
      parameters: operation.parameters ?? [],
      takesBody: operation.requestBody !== undefined,
      statuses: Object.keys(operation.responses).map(Number),
    })),
  );

/** A request made from an operation: sound parts and mutated ones, mixed. */
export interface MadeRequest {
  readonly path: string;
  readonly headers: Readonly<Record<string, string>>;
  readonly body: string | Uint8Array<ArrayBuffer> | null;
}

const anyText = fc.oneof(
  fc.string({ maxLength: 30 }),
  fc.string({ unit: "grapheme", maxLength: 12 }),
  fc.constantFrom("", "..", ".", "null", "-1", "1e9", "%00"),
);

/** A value that the schema allows, or any text at all. */
function parameterValue({ name, schema }: Parameter, known: Readonly<Record<string, readonly string[]>>): fc.Arbitrary<string> {
  const allowed = schema.enum as readonly string[] | undefined;
  const sound =
    known[name] !== undefined
      ? fc.constantFrom(...known[name])
      : allowed !== undefined
        ? fc.constantFrom(...allowed)
        : schema.type === "integer" || schema.type === "number"
          ? fc.integer({ min: 0, max: 250 }).map(String)
          : fc.string({ maxLength: 20 });
  return fc.oneof({ weight: 3, arbitrary: sound }, { weight: 1, arbitrary: anyText });
}

/** What can stand in a header without being refused before the server sees it (RFC 9110, section 5.5). */
const headerSafe = (value: string): string => value.replaceAll(/[^\x20-\x7e]/g, "?").trim();

export function requestFor(
  operation: Operation,
  known: Readonly<Record<string, readonly string[]>>,
  bodies: fc.Arbitrary<string | Uint8Array<ArrayBuffer>>,
): fc.Arbitrary<MadeRequest> {
  const values = fc.tuple(
    ...operation.parameters.map((parameter) =>
      fc.option(parameterValue(parameter, known), { nil: null, freq: parameter.in === "path" ? Number.MAX_SAFE_INTEGER : 3 }),
    ),
  );
  return fc
    .record({ values, body: operation.takesBody ? fc.option(bodies, { nil: null, freq: 10 }) : fc.constant(null) })
    .map(({ values: given, body }) => {
      let path = operation.path;
      const query = new URLSearchParams();
      const headers: Record<string, string> = {};
      operation.parameters.forEach((parameter, k) => {
        const value = given[k] ?? null;
        if (parameter.in === "path") path = path.replace(`{${parameter.name}}`, encodeURIComponent(value ?? "x"));
        else if (value !== null && parameter.in === "query") query.set(parameter.name, value);
        else if (value !== null) headers[parameter.name] = headerSafe(value);
      });
      const asked = query.toString();
      return { path: asked === "" ? path : `${path}?${asked}`, headers, body };
    });
}

/** A document with one thing in it changed: a value replaced by another, a key taken away, or one added. */
export const mutated = (document: unknown): fc.Arbitrary<string> =>
  fc
    .record({
      steps: fc.array(fc.nat({ max: 50 }), { maxLength: 5 }),
      by: fc.jsonValue({ maxDepth: 2 }),
      how: fc.constantFrom("replace", "delete", "add"),
    })
    .map(({ steps, by, how }) => {
      const copy = structuredClone(document) as Record<string, unknown>;
      let place: Record<string, unknown> = copy;
      for (const step of steps) {
        const next = Object.values(place)[step % Math.max(1, Object.keys(place).length)];
        if (typeof next !== "object" || next === null) break;
        place = next as Record<string, unknown>;
      }
      const keys = Object.keys(place);
      const key = keys[(steps.at(-1) ?? 0) % Math.max(1, keys.length)] ?? "x";
      if (how === "delete") Reflect.deleteProperty(place, key);
      else place[how === "add" ? "x-added" : key] = by;
      return JSON.stringify(copy);
    });
