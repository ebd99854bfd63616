import type { Coincidence, RotatingPart } from "../orders/index.js";
import { coincidences } from "../orders/index.js";
import { decimated } from "../signal/decimation.js";
import type { SampleReader } from "../signal/sample-reader.js";
import type { ShaftAngle } from "../signal/shaft-angle.js";
import { type SignalResult, signalFault, signalValue } from "../signal/signal-fault.js";
import type { AttributionInput } from "./input.js";
import { type OrderLine, orderLines, type SpeedRange, sameOrder } from "./order-lines.js";

/** A recording made ready: what can be seen in it, thinned out to what the orders need. */
export interface Run {
  /** One per channel. */
  readonly readers: readonly SampleReader[];
  /** First sample of the readers that lies within the run, and how many do. */
  readonly first: number;
  readonly count: number;
  readonly rate: number;
  readonly duration: number;
  readonly wheelTurns: number;
  readonly lines: readonly OrderLine[];
  readonly speeds: SpeedRange;
  /** Greatest frequency that the recording shows, Hz. */
  readonly limit: number;
}

/** A little below half the rate sine and cosine are still two different things. */
const NEARLY_HALF = 0.98;
/** Places along a run at which its speed is looked up. */
const SPEED_PLACES = 2000;

/** Faults: signal.no-samples (no channel), signal.bad-rate, signal.lengths-differ, signal.too-short, attribution.not-turning, attribution.no-orders. */
export function prepareRun({ channels, reference, parts, filter }: AttributionInput): SignalResult<Run> {
  const [first, ...others] = channels.map(({ samples }) => samples);
  if (first === undefined) return signalFault("signal.no-samples", "channels", { samples: 0 });
  const { rate, length } = first;
  if (!(rate > 0 && Number.isFinite(rate))) return signalFault("signal.bad-rate", "channels[0].rate", { rate });
  const odd = others.findIndex((other) => other.rate !== rate || other.length !== length || other.start !== first.start);
  if (odd >= 0) return signalFault("signal.lengths-differ", `channels[${odd + 1}]`, { first: length, other: others[odd]?.length ?? 0 });
  const { angle, perWheelTurn } = reference;
  const speeds = speedRange(angle);
  if (!(angle.total > 0 && speeds.slowest > 0)) return signalFault("attribution.not-turning", "reference.angle");
  const limit = Math.min((NEARLY_HALF * rate) / 2, filter ?? Number.POSITIVE_INFINITY);
  const lines = orderLines(parts, perWheelTurn, speeds, limit);
  const seen = lines.filter(({ observable }) => observable);
  if (seen.length === 0) return signalFault("attribution.no-orders", "parts", { orders: lines.length, limit });
  const highest = Math.min(limit, Math.max(...seen.map((line) => line.highest)) * (1 + reference.looseness));
  const factor = Math.max(1, Math.floor(rate / (4 * highest)));
  const readers = channels.map(({ samples }) => decimated(samples, factor));
  const [thinned] = readers as [SampleReader, ...SampleReader[]];
  const begin = Math.max(0, Math.ceil((angle.start - thinned.start) * thinned.rate));
  const end = Math.min(thinned.length, Math.floor((angle.end - thinned.start) * thinned.rate) + 1);
  const needed = SAMPLES_PER_UNKNOWN * (2 + 2 * seen.length);
  if (end - begin < needed)
    return signalFault("signal.too-short", "channels[0]", { samples: Math.max(0, end - begin) * factor, needed: needed * factor });
  const timeOf = (sample: number): number => thinned.start + sample / thinned.rate;
  const turns = (angle.angleAt(timeOf(end - 1)) - angle.angleAt(timeOf(begin))) / (2 * Math.PI);
  const wheelTurns = turns / perWheelTurn;
  if (wheelTurns < FEWEST_TURNS)
    return signalFault("signal.too-short", "channels[0]", {
      samples: (end - begin) * factor,
      needed: Math.ceil(((end - begin) * factor * FEWEST_TURNS) / wheelTurns),
    });
  const duration = (end - begin) / thinned.rate;
  return signalValue({ readers, first: begin, count: end - begin, rate: thinned.rate, duration, wheelTurns, lines, speeds, limit });
}

/** A fit needs so many times more samples than it has unknowns. */
const SAMPLES_PER_UNKNOWN = 4;
/** Turns of the wheel below which nothing is said about any order (common practice, no source). */
const FEWEST_TURNS = 8;

function speedRange(angle: ShaftAngle): SpeedRange {
  const at = (place: number): number => angle.speedAt(angle.start + ((angle.end - angle.start) * place) / SPEED_PLACES) / (2 * Math.PI);
  let [slowest, fastest] = [Number.POSITIVE_INFINITY, 0];
  for (let place = 0; place <= SPEED_PLACES; place++) {
    slowest = Math.min(slowest, at(place));
    fastest = Math.max(fastest, at(place));
  }
  return { slowest, middle: angle.speedAt(angle.timeOf(angle.total / 2)) / (2 * Math.PI), fastest };
}

/** How a run is cut up. */
export interface BlockPlan {
  readonly blocks: number;
  /** Every so-manieth block is looked at; each when left out. */
  readonly every?: number;
  /** Pairs of observable orders that one block cannot part. */
  readonly unparted: readonly Coincidence[];
}

/** Turns of the wheel in a block: fewer say too little, and over more the two wheels of an axle no longer turn alike (common practice, no source). */
const LEAST_TURNS = 12;
const MOST_TURNS = 200;
/** A followed speed is not good enough to hold a phase longer than this (common practice, no source). */
const MOST_TURNS_LOOSE = 24;

const seenIn = ({ lines }: Run): readonly OrderLine[] => lines.filter(({ observable }) => observable);

/** Blocks that a fit of all orders has samples for. */
const roomFor = (run: Run): number => Math.floor(run.count / (2 * SAMPLES_PER_UNKNOWN * (2 + 2 * seenIn(run).length)));

/** The shortest blocks there are, `most` of them spread over the run: they part fewer orders, and show how those together rise and fall. */
export function shortestBlocks(run: Run, most: number): BlockPlan {
  const blocks = Math.max(1, Math.min(roomFor(run), Math.floor(run.wheelTurns / LEAST_TURNS)));
  return { blocks, unparted: [], every: Math.ceil(blocks / most) };
}

/** As many blocks as part no fewer pairs than the longest block would; amplitudes are then followed as closely as can be. */
export function planBlocks(run: Run, parts: readonly RotatingPart[], looseness: number): BlockPlan {
  const { wheelTurns } = run;
  const longest = Math.min(wheelTurns, looseness > 0 ? MOST_TURNS_LOOSE : MOST_TURNS);
  const seen = seenIn(run);
  const unpartedBy = (turns: number): readonly Coincidence[] =>
    coincidences(parts, turns).filter((pair) => [pair.first, pair.second].every((end) => seen.some((line) => sameOrder(line, end))));
  const unavoidable = unpartedBy(longest).length;
  let turns = Math.min(LEAST_TURNS, longest);
  while (turns < longest && unpartedBy(turns).length > unavoidable) turns = Math.min(longest, turns * 1.1);
  const blocks = Math.max(1, Math.min(roomFor(run), Math.floor(wheelTurns / turns)));
  return { blocks, unparted: unpartedBy(wheelTurns / blocks) };
}
