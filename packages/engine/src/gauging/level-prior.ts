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
  return tiedGroups(observations, shafts).reduce((largest, next) => (next.length > largest.length ? next : largest), []);
}

/** The shafts, by place, that differences tie to one another: every group of two or more, in power order of its first. */
function tiedGroups(observations: readonly Observation[], shafts: readonly string[]): readonly (readonly number[])[] {
  const group = shafts.map((_, s) => s);
  for (const observation of observations) {
    if (observation.kind !== "difference") continue;
    const from = group[shafts.indexOf(observation.reading.from)];
    const to = group[shafts.indexOf(observation.reading.to)];
    group.forEach((of, s) => {
      if (of === to) group[s] = from as number;
    });
  }
  const members = shafts.map((_, s) => group.flatMap((other, k) => (other === group[s] ? [k] : [])));
  return members.filter((own, s) => own[0] === s && own.length > 1);
}

/**
 * Warnings on shafts that were read against one another while nothing ties them to those that are known: they were read, and yet cannot be told.
 * params: `shafts`, and the difference to `read` that ties them. unknown: the shafts without an inclination.
 */
export function looseGroupFindings(
  observations: readonly Observation[],
  shafts: readonly string[],
  unknown: readonly string[],
  { path }: Gauging,
): readonly Finding[] {
  const loose = tiedGroups(observations, shafts).filter((group) => group.every((s) => unknown.includes(shafts[s] as string)));
  return loose.map((group): Finding => {
    const [first = 0] = group;
    const last = group.at(-1) ?? 0;
    const [from, to] = first > 0 ? [first - 1, first] : [last, last + 1];
    return {
      code: "gauging.group-not-tied",
      severity: "warn",
      path: `${path}.readings`,
      params: { shafts: group.map((s) => shafts[s] as string), read: `between:${shafts[from]},${shafts[to]}` },
    };
  });
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
