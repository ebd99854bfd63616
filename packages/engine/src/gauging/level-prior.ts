import type { Finding } from "../findings/index.js";
import { degreesToRadians, radiansToDegrees } from "../units/index.js";
import type { Gauging } from "./gauging.js";
import { type Observation, rectangularSource, totalU } from "./observation.js";

/** Half width within which shafts lie level on average that were read against one another only (common practice, no source: steeper drivelines are rare). */
export const ASSUMED_LEVEL = degreesToRadians(15);

/**
 * The shafts, by place, that differences tie to one another while no reading ties any shaft of the driveline to gravity: the largest such group, the first
 * of several. Empty where a shaft was read against gravity, or nothing is tied. Joint angles within a group follow from the differences; between groups nothing is known.
 */
export function shaftsWithoutLevel(observations: readonly Observation[], shafts: readonly string[]): readonly number[] {
  if (observations.some(({ kind }) => kind === "absolute")) return [];
  const group = shafts.map((_, s) => s);
  for (const observation of observations) {
    if (observation.kind !== "difference") continue;
    const from = group[shafts.indexOf(observation.reading.from)];
    const to = group[shafts.indexOf(observation.reading.to)];
    group.forEach((of, s) => {
      if (of === to) group[s] = from as number;
    });
  }
  const groups = group.map((of, s) => (group.indexOf(of) === s ? group.flatMap((other, k) => (other === of ? [k] : [])) : []));
  return groups.reduce((largest, next) => (next.length > Math.max(1, largest.length) ? next : largest), []);
}

/** Observations joined, where shafts have no level, by their mean inclination = 0 within `ASSUMED_LEVEL`: it moves them all alike and no joint between them. */
export function withAssumedLevel(
  observations: readonly Observation[],
  gauging: Gauging,
  shafts: readonly string[],
): readonly Observation[] {
  const group = shaftsWithoutLevel(observations, shafts);
  const [first] = group;
  if (first === undefined) return observations;
  const sources = [rectangularSource(gauging.path, shafts[first] as string, ASSUMED_LEVEL, "assumed")];
  const row = Array.from(observations[0]?.row ?? [], (_, s) => (group.includes(s) ? 1 / group.length : 0));
  return [...observations, { kind: "level-prior", row, value: 0, sources, u: totalU(sources), path: gauging.path }];
}

/** The note on shafts without a level; params: `shafts`, what was assumed (`assumedDeg`), and a place to `read` against gravity. */
export function levelFinding(group: readonly number[], shafts: readonly string[], { path }: Gauging): readonly Finding[] {
  const ids = group.map((s) => shafts[s] as string);
  const [read] = ids;
  if (read === undefined) return [];
  const params = {
    shafts: ids,
    assumedDeg: radiansToDegrees(ASSUMED_LEVEL),
    read: read === "source" || read === "driven" ? read : `${read}:source-end`,
  };
  return [{ code: "gauging.level-not-read", severity: "note", path: `${path}.readings`, params }];
}
