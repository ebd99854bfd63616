import { LIMIT_SOURCES } from "@halfturn/engine/limits";
import type { Catalogue } from "./catalogue.js";

/** Where a limit comes from, as a sentence without its full stop; what a case wrote itself stands as it was written, and a limit that it set without a word is said to be its own. */
export function limitSourceText({ labels }: Catalogue, source: string): string {
  const known = LIMIT_SOURCES.find((one) => one === source);
  if (known) return labels.limitSources[known];
  return /^limits\.\w+$/.test(source) ? labels.limitOfCase(source) : source;
}
