import type { PoseModel } from "../gauging/index.js";
import type { ShaftPose } from "../geometry/index.js";
import { type Deviates, normalDeviates } from "../uncertainty/index.js";
import type { Radians } from "../units/index.js";

/** Half width of a rectangular error over its standard uncertainty. */
const RECTANGULAR_HALF_WIDTH = Math.sqrt(3);

/** The poses the readings tell; a shaft that cannot be known lies level so that the rest can still be computed. */
export const bestPoses = (model: PoseModel): readonly ShaftPose[] =>
  model.shafts.map((_, s) => ({ inclination: model.inclination[s] ?? (0 as Radians), heading: model.heading[s] ?? (0 as Radians) }));

/** One error source and the pose numbers it moves: place 2s is the inclination of shaft s, 2s + 1 its heading. */
interface Influence {
  readonly normal: boolean;
  readonly places: readonly number[];
  /** Change of each of those numbers for one standard uncertainty of the source. */
  readonly byU: readonly number[];
}

function influences(model: PoseModel, origins: "all" | "measured"): readonly Influence[] {
  return model.sources.flatMap((source, k) => {
    if (source.u === 0 || (origins === "measured" && source.origin === "assumed")) return [];
    const moved = model.shafts.flatMap((_, s) => [
      { place: 2 * s, by: (model.inclinationBy[s]?.[k] ?? 0) * source.u },
      { place: 2 * s + 1, by: (model.headingBy[s]?.[k] ?? 0) * source.u },
    ]);
    const felt = moved.filter(({ by }) => by !== 0);
    if (felt.length === 0) return [];
    return [{ normal: source.shape === "normal", places: felt.map(({ place }) => place), byU: felt.map(({ by }) => by) }];
  });
}

/**
 * A source of poses drawn from the error law of the readings (JCGM 101:2008, 6): every call gives the numbers of the next draw,
 * inclination and heading of each shaft in turn, in one buffer that is written again by the next call.
 * origins: all errors, or only those of readings that were taken.
 */
export function poseDraws(model: PoseModel, uniform: Deviates, origins: "all" | "measured"): () => Float64Array {
  const normal = normalDeviates(uniform);
  const sources = influences(model, origins);
  const best = Float64Array.from(bestPoses(model).flatMap(({ inclination, heading }) => [inclination, heading]));
  const drawn = new Float64Array(best.length);
  return () => {
    drawn.set(best);
    for (const source of sources) {
      const deviate = source.normal ? normal() : RECTANGULAR_HALF_WIDTH * (2 * uniform() - 1);
      for (let j = 0; j < source.places.length; j++) {
        drawn[source.places[j] as number] = (drawn[source.places[j] as number] as number) + (source.byU[j] as number) * deviate;
      }
    }
    return drawn;
  };
}

/** The poses in a buffer of draws. */
export function posesFrom(drawn: Float64Array): readonly ShaftPose[] {
  const poses = new Array<ShaftPose>(drawn.length / 2);
  for (let s = 0; s < poses.length; s++) {
    poses[s] = { inclination: drawn[2 * s] as Radians, heading: drawn[2 * s + 1] as Radians };
  }
  return poses;
}
