import type { Case } from "@halfturn/casefile";
import type { View } from "./view.js";
import { wrap } from "./wrap.js";

/** What a page is about: the case and its vehicle. */
export function titleLines({ title, vehicle }: Case, view: View): readonly string[] {
  const lines = [title, vehicle?.label ?? ""].filter((line) => line !== "").flatMap((line) => wrap(line, view.width, ""));
  return lines.length === 0 ? [] : [...lines, ""];
}
