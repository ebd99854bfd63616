import type { PoseModel } from "../gauging/index.js";
import type { Driveline } from "../kinematics/index.js";
import type { Radians } from "../units/index.js";
import { quantitiesOf, quantityIndex } from "./chain-quantities.js";
import type { Sensitivity } from "./driveline-analysis.js";
import { bestPoses } from "./pose-draws.js";

/**
 * Which reading adds most to the uncertainty of one quantity of the chain: shares of the variance of its vector, largest first, adding up to 1.
 * First order (JCGM 100:2008, 5.1.2), each source moved by its standard uncertainty up and down. Sources of one reading are taken together.
 */
export function sensitivityOf(driveline: Driveline, model: PoseModel, place: number): readonly Sensitivity[] {
  const { count } = quantityIndex(driveline.joints.length);
  const evaluate = quantitiesOf(driveline, null);
  const best = bestPoses(model);
  const up = new Float64Array(2 * count);
  const down = new Float64Array(2 * count);
  const shares = new Map<string, { path: string; of: string; share: number }>();
  model.sources.forEach(({ path, of, u }, k) => {
    const moved = (sign: number) =>
      best.map((pose, s) => ({
        inclination: (pose.inclination + sign * u * (model.inclinationBy[s]?.[k] ?? 0)) as Radians,
        heading: (pose.heading + sign * u * (model.headingBy[s]?.[k] ?? 0)) as Radians,
      }));
    evaluate(moved(1), up);
    evaluate(moved(-1), down);
    const dx = ((up[2 * place] as number) - (down[2 * place] as number)) / 2;
    const dy = ((up[2 * place + 1] as number) - (down[2 * place + 1] as number)) / 2;
    const key = `${path} ${of}`;
    const before = shares.get(key)?.share ?? 0;
    shares.set(key, { path, of, share: before + dx * dx + dy * dy });
  });
  const total = [...shares.values()].reduce((sum, { share }) => sum + share, 0);
  if (total === 0) return [];
  return [...shares.values()]
    .map((entry) => ({ ...entry, share: entry.share / total }))
    .filter(({ share }) => share > 0)
    .sort((a, b) => b.share - a.share || (a.path < b.path ? -1 : 1));
}
