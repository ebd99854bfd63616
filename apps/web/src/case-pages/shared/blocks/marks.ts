import type { Tone } from "@halfturn/report/browser";

/** The mark is for the eye alone: the words beside it say the same. */
export const MARKS: Readonly<Record<Tone | "stop" | "warn" | "note", string>> = {
  good: "✓",
  over: "▲",
  under: "▼",
  unsure: "?",
  none: "–",
  stop: "▲",
  warn: "?",
  note: "○",
};
