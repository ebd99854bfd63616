import type { Sensitivity } from "@halfturn/engine/analysis";

/** Which reading to repeat, with the share of the variance it carries. */
export type WhatToRepeat = Pick<Sensitivity, "of" | "path" | "share">;

/** A direction that was measured stands among the gauging's headings; one that was taken as straight stands nowhere. */
export const isMeasuredHeading = (path: string): boolean => /\.headings\[\d+\]/.test(path);

/** `front:driven-end` in its parts. */
export interface SpelledPlace {
  readonly kind: "turn-round" | "between" | "source-end" | "driven-end" | "along";
  readonly shaft: string;
  readonly other: string;
}

/** Takes apart a place as the engine names it in its findings. */
export function spelledPlace(spelled: string): SpelledPlace {
  if (spelled === "turn-round") return { kind: "turn-round", shaft: "", other: "" };
  if (spelled.startsWith("between:")) {
    const [from = "", to = ""] = spelled.slice("between:".length).split(",");
    return { kind: "between", shaft: from, other: to };
  }
  const [shaft = "", end] = spelled.split(":");
  return { kind: end === "source-end" || end === "driven-end" ? end : "along", shaft, other: "" };
}
