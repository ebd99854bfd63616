import { type Case, newCase } from "@halfturn/casefile";
import type { By } from "./case-store.js";

/** A case that is sound and says what a test wants it to say. */
export const sampleCase = (id: string, more: Partial<Case> = {}): Case => ({
  ...newCase({ id, title: `Case ${id}`, layout: "one-piece", createdAt: "2026-04-13T09:00:00Z" }),
  ...more,
});

/** The n-th moment of a test, by a device. */
export const at = (second: number, savedBy = "Bay 1"): By => ({
  savedBy,
  savedAt: new Date(Date.UTC(2026, 3, 13, 9, 0, second)).toISOString(),
});

export const PNG = Uint8Array.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a, 1, 2, 3]);
