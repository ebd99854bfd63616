import type { Attribution, Contribution } from "./attribution.js";
import type { AttributionFinding } from "./attribution-finding.js";
import type { Evidence } from "./evidence.js";
import { type PartOrderName, sameOrder } from "./order-lines.js";
import { foldedFrequency } from "./sensor-checks.js";

/** Below this the speed counts as steady, so that a fixed frequency looks like an order. */
const STEADY = 0.05;
/** A correction of the speed worth a word. */
const CORRECTED = 0.003;
/** More than this share unexplained is said. */
const MOSTLY = 0.9;
/** Odds of some 400 to 1. */
const SURELY = 6;
/** Beats slower than one in ten seconds or faster than five a second are not felt as such (common practice, no source). */
const BEAT = { slowest: 0.1, fastest: 5, weaker: 0.3 };

const names = (first: PartOrderName, second: PartOrderName) => ({
  part: first.part,
  order: first.order,
  otherPart: second.part,
  otherOrder: second.order,
});

/** Remarks on a run and its result. */
export function findingsOf(evidence: Evidence, result: Omit<Attribution, "findings">): readonly AttributionFinding[] {
  return [
    ...abstentions(result),
    ...speedFindings(evidence),
    ...(evidence.slip === null
      ? []
      : [warn("attribution.slip-changes", { leastShare: evidence.slip.least, mostShare: evidence.slip.most })]),
    ...(result.verdict !== null && result.unexplainedShare > MOSTLY
      ? [
          warn("attribution.mostly-unexplained", {
            part: result.verdict.part,
            order: result.verdict.order,
            unexplainedShare: result.unexplainedShare,
          }),
        ]
      : []),
    ...alsoLarge(result),
    ...result.resonances.map(({ frequency, excitedBy, share }) =>
      warn("attribution.resonance", { frequencyHz: frequency, excitedBy, ...(share === null ? {} : { energyShare: share }) }),
    ),
    ...beats(evidence, result.contributions),
    ...foldedBack(evidence),
    ...unseen(evidence, result.contributions),
  ];
}

const warn = (code: AttributionFinding["code"], params: AttributionFinding["params"]): AttributionFinding => ({
  code,
  severity: "warn",
  path: "",
  params,
});
const note = (code: AttributionFinding["code"], params: AttributionFinding["params"]): AttributionFinding => ({
  ...warn(code, params),
  severity: "note",
});

function abstentions({
  abstained,
  coincidences,
  contributions,
  unexplainedShare,
}: Omit<Attribution, "findings">): readonly AttributionFinding[] {
  if (abstained === null) return [];
  const { reason, between } = abstained;
  const [first, ...others] = between;
  if (first === undefined || reason === "nothing") return [note("attribution.nothing-found", {})];
  if (reason === "too-little") return [warn("attribution.mostly-unexplained", { part: first.part, order: first.order, unexplainedShare })];
  // An order above half the rate that was found as such has a finding of its own.
  if (reason === "fold-back" && contributions.some((one) => sameOrder(one, first) && !one.observable)) return [];
  return others.map((other) => {
    if (reason === "coincidence") {
      const pair = coincidences.find(
        ({ first: a, second: b }) => [a, b].some((x) => sameOrder(x, first)) && [a, b].some((x) => sameOrder(x, other)),
      );
      const parted = { partedByGear: pair?.partedByGear ?? false, ...(pair?.wheelTurns ? { wheelTurns: pair.wheelTurns } : {}) };
      return warn("attribution.coincidence", { ...names(first, other), ...parted });
    }
    const code = {
      "fold-back": "attribution.fold-back-coincides",
      "loose-speed": "attribution.speed-loose",
      several: "attribution.several",
    } as const;
    return warn(code[reason], names(first, other));
  });
}

/** An order beside the one that is named, at least half as strong in energy, and elsewhere. */
const ALSO = 0.5;

function alsoLarge({ verdict, contributions }: Omit<Attribution, "findings">): readonly AttributionFinding[] {
  const named = contributions.find((one) => verdict !== null && sameOrder(one, verdict));
  if (named === undefined) return [];
  return contributions.flatMap((one) =>
    sameOrder(one, named) || (one.share ?? 0) < ALSO * (named.share ?? 0) ? [] : [warn("attribution.several", names(named, one))],
  );
}

function speedFindings({ run, followed, input }: Evidence): readonly AttributionFinding[] {
  const { slowest, fastest, middle } = run.speeds;
  const [reading] = followed.readings;
  const changed = (fastest - slowest) / middle;
  return [
    ...(changed < STEADY ? [note("attribution.speed-steady", { changeShare: changed })] : []),
    ...(input.reference.looseness > 0 && reading !== undefined && Math.abs(reading.scale - 1) > CORRECTED
      ? [note("attribution.speed-corrected", { correctionShare: reading.scale - 1 })]
      : []),
  ];
}

/** Orders that would beat against one another: both there, of like size, and close. */
function beats({ readings }: Evidence, contributions: readonly Contribution[]): readonly AttributionFinding[] {
  const [best] = readings;
  const there = best.columns.flatMap(({ column, presence: odds, share }) =>
    odds > SURELY && column.lines[0] !== undefined ? [{ line: column.lines[0], size: Math.sqrt(share) }] : [],
  );
  const middleOf = (line: PartOrderName): number => {
    const one = contributions.find((other) => sameOrder(other, line));
    return one === undefined ? 0 : (one.lowest + one.highest) / 2;
  };
  return there.flatMap((a, i) =>
    there.slice(i + 1).flatMap((b) => {
      const beat = Math.abs(middleOf(a.line) - middleOf(b.line));
      const alike = Math.min(a.size, b.size) / Math.max(a.size, b.size);
      if (a.line.part === b.line.part || beat < BEAT.slowest || beat > BEAT.fastest || alike < BEAT.weaker) return [];
      return [note("attribution.beat", { ...names(a.line, b.line), beatHz: beat })];
    }),
  );
}

/** Orders above half the rate that were found where they fold to. */
const foldedBack = ({ readings, input }: Evidence): readonly AttributionFinding[] =>
  readings[0].folded.flatMap(({ lines, presence, frequency }) => {
    const seenHz = foldedFrequency(frequency, input.channels[0]?.samples.rate ?? 0);
    if (presence <= SURELY) return [];
    return lines.map(({ part, order }) => warn("attribution.folded-back", { part, order, frequencyHz: frequency, seenHz }));
  });

/** Orders of which the recording says nothing, with the place where they would show. */
const unseen = ({ run }: Evidence, contributions: readonly Contribution[]): readonly AttributionFinding[] =>
  contributions.flatMap(({ part, order, observable, lowest, highest, foldsTo }) =>
    observable
      ? []
      : [
          note("attribution.order-not-observable", {
            part,
            order,
            lowestHz: lowest,
            highestHz: highest,
            limitHz: run.limit,
            ...(foldsTo === null ? {} : { foldsToHz: foldsTo }),
          }),
        ],
  );
