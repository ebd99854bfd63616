import type { Slip, SlipKind } from "./slip.js";

/** How sure the data must be that certain readings are wrong before they are set aside. */
const SURE = 0.99;
/** How sure the data must be of the kind of slip before it is named. */
const NAMED = 0.95;
/** Explanations that together hold the rest of the probability are not followed up. */
const NEGLIGIBLE = 0.01;

/** What the explanations of one contradiction come to. */
export interface SlipVerdict {
  /** The readings that are wrong, where the data decide; else none. */
  readonly wrong: readonly number[];
  /** Readings that may be wrong. */
  readonly suspects: readonly number[];
  /** The kind of slip, where it clearly explains more than any other. */
  readonly kind: SlipKind | null;
  /** Kinds with their best explanation, likeliest first. */
  readonly ranked: readonly Slip[];
}

/** Probabilities of the explanations, each as likely beforehand as its rarity says; they sum to 1. */
function probabilities(slips: readonly Slip[]): readonly number[] {
  const least = slips[0]?.cost ?? 0;
  const weights = slips.map(({ cost }) => Math.exp((least - cost) / 2));
  const total = weights.reduce((sum, weight) => sum + weight, 0);
  return weights.map((weight) => weight / total);
}

const sameReadings = (a: readonly number[], b: readonly number[]): boolean =>
  a.length === b.length && a.every((index) => b.includes(index));

/** Weighs the explanations of a contradiction. slips: at least one, likeliest first. */
export function weighSlips(slips: readonly Slip[]): SlipVerdict {
  const chance = probabilities(slips);
  const sumWhere = (holds: (slip: Slip) => boolean): number =>
    slips.reduce((sum, slip, k) => sum + (holds(slip) ? (chance[k] ?? 0) : 0), 0);
  const best = slips[0] as Slip;
  const decided = sumWhere(({ blames }) => sameReadings(blames, best.blames)) >= SURE;
  const followed = followedUp(slips, chance);
  const named = sumWhere(({ kind }) => kind === best.kind) >= NAMED;
  return {
    wrong: decided ? best.blames : [],
    suspects: decided ? best.blames : [...new Set(followed.flatMap(({ blames }) => blames))],
    kind: named ? best.kind : null,
    ranked: followed,
  };
}

/** The likeliest explanations that together hold all but a negligible share of the probability. */
function followedUp(slips: readonly Slip[], chance: readonly number[]): readonly Slip[] {
  let sum = 0;
  const count = slips.findIndex((_, k) => {
    sum += chance[k] ?? 0;
    return sum >= 1 - NEGLIGIBLE;
  });
  return slips.slice(0, count < 0 ? slips.length : count + 1);
}
