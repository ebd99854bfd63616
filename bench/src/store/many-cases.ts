import { type Case, newCase } from "@halfturn/casefile";
import type { CaseStore } from "@halfturn/store";

const VEHICLES = ["gritter", "van", "crane", "truck", "shuttle", "tipper", "tanker", "quarry", "post", "bus", "wagon", "logging", "yard"];
const COMPLAINTS = ["boom", "drone", "hum", "shudder", "buzz", "rumble", "growl", "springs", "lift", "bearing", "wedge", "pinion"];
const BATCH = 1000;

/** A word that every case has, and one that each has for itself. */
export const EVERYWHERE = "skerry";
export const onlyIn = (number: number): string => `unit${number}`;

const pick = (words: readonly string[], number: number): string => words[number % words.length] ?? "";

/** Fills a store with made-up cases whose words are as often and as rare as in a shop. */
export async function fill(store: CaseStore, count: number): Promise<readonly string[]> {
  for (let from = 0; from < count; from += BATCH) {
    const documents = Array.from({ length: BATCH }, (_, k): Case => {
      const number = from + k;
      return {
        ...newCase({
          id: `case-${number}`,
          title: `${pick(VEHICLES, number)} ${number % 400}: ${pick(COMPLAINTS, number * 5)}`,
          layout: "one-piece",
          createdAt: "2026-01-01",
        }),
        vehicle: { label: `Skerry ${pick(VEHICLES, number * 3 + 1)} works` },
        notes: `${pick(COMPLAINTS, number * 7 + 2)} ${pick(COMPLAINTS, number * 11 + 5)} ${onlyIn(number)} ${EVERYWHERE}`,
      };
    });
    await store.createAll(documents, { savedBy: "bench", savedAt: "2026-01-01T00:00:00Z" });
  }
  return [...VEHICLES, ...COMPLAINTS];
}
