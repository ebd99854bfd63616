import { parse, tokenize } from "@humanwhocodes/momoa";

export type Parsed =
  | { readonly ok: true; readonly value: unknown }
  | { readonly ok: false; readonly line: number; readonly column: number };

/** JSON text to a value, or the line and column where it stops being JSON. The runtime's own parser is fast but names no place that can be relied on. */
export function parseJson(text: string): Parsed {
  try {
    return { ok: true, value: JSON.parse(text) };
  } catch {
    return { ok: false, ...faultPlace(text) };
  }
}

function faultPlace(text: string): { readonly line: number; readonly column: number } {
  try {
    parse(text, { mode: "json" });
  } catch (error) {
    const { line, column } = error as { readonly line?: unknown; readonly column?: unknown };
    if (typeof line === "number" && typeof column === "number") return { line, column };
  }
  return bareControlCharacter(text);
}

/** The one fault that the placing parser lets pass: a line break or tab inside a string. */
function bareControlCharacter(text: string): { readonly line: number; readonly column: number } {
  for (const { type, loc } of tokenize(text, { mode: "json" })) {
    if (type !== "String") continue;
    const raw = text.slice(loc.start.offset, loc.end.offset);
    // biome-ignore lint/suspicious/noControlCharactersInRegex: these are what is looked for
    const at = raw.search(/[\u0000-\u001f]/);
    if (at >= 0) return { line: loc.start.line, column: loc.start.column + at };
  }
  return { line: 1, column: 1 };
}
