import { degreesToRadians } from "../units/index.js";
import { canSwap, LEAST_REDUNDANCY } from "./largest-contrast.js";
import { type Equation, fitLinear, type LinearFit } from "./linear-fit.js";
import { type Observation, totalU } from "./observation.js";
import type { Slip, SlipKind } from "./slip.js";

/** Scatter of what paint, rust, a dent, a bent tube or an unmachined face adds under the magnet (common practice, no source). */
const SPOT_SCATTER = degreesToRadians(0.5);
/** Scatter of a slip of any other sort, such as a digit misread (common practice, no source). */
const MISREAD_SCATTER = degreesToRadians(5);
const FAR_ZERO_SCATTER = degreesToRadians(5);

/** How much rarer than a wrong lower end, as minus twice the logarithm of the ratio (common practice, no source). */
const RARITY: Readonly<Record<SlipKind, number>> = {
  "lower-end": 0,
  side: 1,
  "not-zeroed": 0,
  spot: 1,
  "rows-swapped": 1,
  misread: 6,
  "zero-far-off": 5,
};

const slip = (kind: SlipKind, blames: readonly number[], misfit: number, size: number): Slip => ({
  kind,
  blames,
  misfit,
  cost: misfit + size + RARITY[kind],
});

/** A shift of unknown size, normal about nought with the scatter given: its misfit and the price of its freedom, in closed form. */
function shifted(kind: SlipKind, fit: LinearFit, observations: readonly Observation[], j: number, scatter: number): readonly Slip[] {
  const redundancy = fit.residualMaker[j]?.[j] ?? 0;
  if (redundancy < LEAST_REDUNDANCY) return [];
  const w = (fit.residuals[j] ?? 0) / Math.sqrt(redundancy);
  const freedom = redundancy * (scatter / (observations[j] as Observation).u) ** 2;
  return [slip(kind, [j], fit.misfit - (w * w * freedom) / (1 + freedom), Math.log1p(freedom))];
}

const refitted = (observations: readonly Equation[], undo: ReadonlyMap<number, Equation>): number =>
  fitLinear(observations.map((observation, k) => undo.get(k) ?? observation)).misfit;

/** Minus a reading's zero entry: as if it had been read from the other side. */
function otherSide({ row, value, u }: Observation, zero: number): Equation {
  return { row: row.map((entry, k) => (k === zero ? -entry : entry)), value, u };
}

/** What a difference shows if the gauge was not zeroed: the shaft itself, one placing. */
function unzeroed(observation: Observation & { readonly kind: "difference" }, zero: number): Equation {
  const row = observation.row.map((entry, k) => (k === zero ? observation.reading.zeroSign : Math.max(0, entry)));
  // Both placings come first among the sources; a gauge of common accuracy has none.
  const onePlacing = observation.sources.length > 2 ? observation.sources.slice(1) : observation.sources;
  return { row, value: observation.value, u: totalU(onePlacing) };
}

/** The readings of two rows put into each other's place; each keeps the side it was taken from. */
function swapped(a: Observation, b: Observation, zero: number): readonly [Equation, Equation] {
  const inPlaceOf = (taken: Observation, place: Observation): Equation => ({
    row: place.row.map((entry, k) => (k === zero ? (taken.row[zero] ?? 0) : entry)),
    value: taken.value,
    u: taken.u,
  });
  return [inPlaceOf(a, b), inPlaceOf(b, a)];
}

function singleSlips(fit: LinearFit, observations: readonly Observation[], zero: number, j: number): readonly Slip[] {
  const observation = observations[j] as Observation;
  if (observation.kind === "zero-prior") return shifted("zero-far-off", fit, observations, j, FAR_ZERO_SCATTER);
  if ((fit.residualMaker[j]?.[j] ?? 0) < LEAST_REDUNDANCY) return [];
  const undone = (kind: SlipKind, equation: Equation): Slip => slip(kind, [j], refitted(observations, new Map([[j, equation]])), 0);
  const slips = [
    ...shifted("spot", fit, observations, j, SPOT_SCATTER),
    ...shifted("misread", fit, observations, j, MISREAD_SCATTER),
    undone("lower-end", { ...observation, value: -observation.value }),
  ];
  if (observation.kind === "absolute") slips.push(undone("side", otherSide(observation, zero)));
  if (observation.kind === "difference") slips.push(undone("not-zeroed", unzeroed(observation, zero)));
  return slips;
}

function swaps(observations: readonly Observation[], zero: number): readonly Slip[] {
  const pairs = observations.flatMap((a, i) => observations.slice(0, i).flatMap((b, j) => (canSwap(a, b) ? [[i, j] as const] : [])));
  const rows = new Set(pairs.flat()).size;
  // A row can be swapped with any other: the chance is shared out among its partners.
  const sharedOut = 2 * Math.log(Math.max(1, (2 * pairs.length) / Math.max(1, rows)));
  return pairs.map(([i, j]) => {
    const [a, b] = swapped(observations[i] as Observation, observations[j] as Observation, zero);
    return slip(
      "rows-swapped",
      [i, j],
      refitted(
        observations,
        new Map([
          [i, a],
          [j, b],
        ]),
      ),
      sharedOut,
    );
  });
}

/**
 * Every single slip that could stand behind a contradiction, likeliest first, by how well the readings agree after undoing it.
 * fit: of the observations, which end with the believable zero; zero: place of the gauge's zero among the unknowns.
 * Evidence: a slip of fixed size has its misfit alone; one of free size is taken as normal about nought and pays for its freedom.
 */
export function explanationsOf(fit: LinearFit, observations: readonly Observation[], zero: number): readonly Slip[] {
  const slips = [...observations.flatMap((_, j) => singleSlips(fit, observations, zero, j)), ...swaps(observations, zero)];
  return slips.sort((a, b) => a.cost - b.cost);
}
