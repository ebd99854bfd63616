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
    const places: number[] = [];
    const byU: number[] = [];
    for (let place = 0; place < 2 * model.shafts.length; place++) {
      const by = (place % 2 === 0 ? model.inclinationBy : model.headingBy)[Math.floor(place / 2)]?.[k] ?? 0;
      if (by === 0) continue;
      places.push(place);
      byU.push(by * source.u);
    }
    return places.length === 0 ? [] : [{ normal: source.shape === "normal", places, byU }];
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
    for (let k = 0; k < sources.length; k++) {
      const { normal: bell, places, byU } = sources[k] as Influence;
      const deviate = bell ? normal() : RECTANGULAR_HALF_WIDTH * (2 * uniform() - 1);
      for (let j = 0; j < places.length; j++) {
        const place = places[j] as number;
        drawn[place] = (drawn[place] as number) + (byU[j] as number) * deviate;
      }
    }
    return drawn;
  };
}

/** Reads the poses of so many shafts out of a buffer of draws: into the same objects each time. */
export function poseReader(shafts: number): (drawn: Float64Array) => readonly ShaftPose[] {
  const poses = Array.from({ length: shafts }, () => ({ inclination: 0 as Radians, heading: 0 as Radians }));
  return (drawn) => {
    for (let s = 0; s < shafts; s++) {
      const pose = poses[s] as { -readonly [Key in keyof ShaftPose]: ShaftPose[Key] };
      pose.inclination = drawn[2 * s] as Radians;
      pose.heading = drawn[2 * s + 1] as Radians;
    }
    return poses;
  };
}

/** The law of poses is linear and its shapes are simple: more draws would not move an end of an interval by a hundredth of u. */
const KEPT_DRAWS = 50_000;

/** The same draws, and each number of them kept in a column of its own, in the order of the buffer; of very many the first. */
export function keptDraws(
  next: () => Float64Array,
  shafts: number,
  draws: number,
): { next: () => Float64Array; columns: readonly Float64Array[] } {
  const kept = Math.min(draws, KEPT_DRAWS);
  const columns = Array.from({ length: 2 * shafts }, () => new Float64Array(kept));
  let draw = 0;
  return {
    columns,
    next: () => {
      const drawn = next();
      if (draw < kept) for (let place = 0; place < drawn.length; place++) (columns[place] as Float64Array)[draw] = drawn[place] as number;
      draw++;
      return drawn;
    },
  };
}
