import type { Finding, FindingParams, Severity } from "../findings/index.js";
import { type Radians, radiansToDegrees } from "../units/index.js";
import { causesOf } from "./causes.js";
import { plainestDisagreement } from "./disagreement.js";
import type { Observation } from "./observation.js";
import type { SlipVerdict } from "./weigh-slips.js";

/** The shaft that a reading tells of; `zero` for one of the turn-round check. */
export function shaftOf(observation: Observation): string {
  if (observation.kind === "absolute") return observation.reading.shaft;
  return observation.kind === "difference" ? observation.reading.to : "zero";
}

const at = (observations: readonly Observation[], indices: readonly number[]): readonly Observation[] =>
  indices.flatMap((k) => observations[k] ?? []);

/** The finding of the slip itself, where the data name one kind and one place for it. */
function namedSlip(verdict: SlipVerdict, observations: readonly Observation[]): readonly Finding[] {
  const { kind } = verdict;
  const slips = verdict.ranked.filter((slip) => slip.kind === kind);
  const blamed = at(observations, slips[0]?.blames ?? []);
  const first = blamed[0];
  if (!first) return [];
  const onePlace = new Set(slips.map(({ blames }) => at(observations, blames).map(shaftOf).join())).size === 1;
  if (!onePlace) return [];
  const readings = [...new Set(slips.flatMap(({ blames }) => at(observations, blames).map(({ path }) => path)))];
  const finding = (code: Finding["code"], params: FindingParams): readonly Finding[] => [
    { code, severity: "warn", path: first.path, params: { ...params, readings } },
  ];
  if (kind === "lower-end" && first.kind !== "zero-check") return finding("gauging.wrong-side-of-level", { shaft: shaftOf(first) });
  if (kind === "rows-swapped") return finding("gauging.rows-swapped", { shafts: blamed.map(shaftOf) });
  if (kind === "not-zeroed" && first.kind === "difference") {
    return finding("gauging.not-zeroed", { from: first.reading.from, to: first.reading.to });
  }
  return [];
}

const setAsideFinding = (observation: Observation): Finding => ({
  code: "gauging.reading-set-aside",
  severity: "warn",
  path: observation.path,
  params: { shaft: shaftOf(observation), readingDeg: radiansToDegrees(observation.value as Radians) },
});

/**
 * What to tell of one contradiction. observations: those it was found in; setAside: the readings left out because of it.
 * Params of the first finding: what was compared (`firstDeg`, `secondDeg`, by place `sourceEndDeg` and `drivenEndDeg`), `differenceDeg`, `allowedDeg`,
 * `readings` (paths), `causes` (codes, likeliest first), `decided`, and `likelier` (path of the reading that is likelier wrong) where the data tell.
 */
export function contradictionFindings(
  verdict: SlipVerdict,
  observations: readonly Observation[],
  severity: Severity,
  setAside: readonly number[],
): readonly Finding[] {
  const { code, of, params } = plainestDisagreement(observations, verdict.suspects);
  const wrong = at(observations, verdict.wrong).filter(({ kind }) => kind !== "zero-prior");
  const likelier: FindingParams = wrong[0] ? { likelier: wrong[0].path } : {};
  const causes = causesOf(verdict.ranked, observations);
  return [
    { code, severity, path: wrong[0]?.path ?? of.path, params: { ...params, ...likelier, decided: wrong.length > 0, causes } },
    ...namedSlip(verdict, observations),
    ...at(observations, setAside).map(setAsideFinding),
  ];
}
