export type PathPart = string | number;
export type Path = readonly PathPart[];

const PLAIN_KEY = /^[A-Za-z_$][\w$-]*$/;

/** A path as the file spells it: `drivelines[0].sections[1].lengthMm`. Keys with odd characters stand in brackets and quotes. */
export function pathText(path: Path): string {
  let out = "";
  for (const part of path) {
    if (typeof part === "number") out += `[${part}]`;
    else if (PLAIN_KEY.test(part)) out += out === "" ? part : `.${part}`;
    else out += `[${JSON.stringify(part)}]`;
  }
  return out;
}

/** The value at a path, or undefined where there is none. */
export function valueAt(root: unknown, path: Path): unknown {
  let value = root;
  for (const part of path) {
    if (typeof value !== "object" || value === null || !Object.hasOwn(value, part)) return undefined;
    value = (value as Record<PathPart, unknown>)[part];
  }
  return value;
}
