import type { Coincidence } from "../orders/index.js";
import type { ShaftAngle } from "../signal/shaft-angle.js";
import { type CauseProbabilities, causeProbabilities, type OrderEvidence, presence } from "./cause-probabilities.js";
import { fitRun, type RunFit } from "./fit-run.js";
import { foldShadows } from "./fold-shadow.js";
import type { AttributionInput } from "./input.js";
import { type MeanSquare, meanSquareOf, type NoisyBlock } from "./line-amplitude.js";
import { type FitColumn, fitColumns, type OrderLine } from "./order-lines.js";
import { type BlockPlan, planBlocks, type Run } from "./run.js";
import { asAcceleration, DERIVATIVES } from "./to-acceleration.js";

/** A column with what was found of it. */
export interface MeasuredColumn {
  readonly column: FitColumn;
  /** Per channel; null where it showed in no block. */
  readonly meanSquares: readonly (MeanSquare | null)[];
  /** The same as accelerations, (m/s^2)^2. */
  readonly accelerations: readonly (MeanSquare | null)[];
  readonly share: number;
  /** Standard uncertainty of the share. */
  readonly u: number;
  /** Logarithm of the odds that it is there. */
  readonly presence: number;
  readonly probability: number;
  /** Where the speed is known loosely: orders above half the rate that may lie on it, and the odds that it is there by the blocks in which none can; null where none may. */
  readonly shadow: { readonly lines: readonly OrderLine[]; readonly presence: number } | null;
}

/** Orders above half the rate that fall together, as it was found where it folds to. */
export interface MeasuredFold {
  readonly lines: readonly OrderLine[];
  readonly share: number;
  readonly presence: number;
  /** Middle of the true frequencies at which it was looked for, Hz; 0 where it was hidden throughout. */
  readonly frequency: number;
}

/** A run fitted at one reading of its speed. */
export interface RunReading {
  readonly fit: RunFit;
  readonly columns: readonly MeasuredColumn[];
  readonly folded: readonly MeasuredFold[];
  readonly none: number;
  readonly unparted: readonly Coincidence[];
  readonly unexplainedShare: number;
}

/**
 * Fits a run at one factor of its speed and weighs its columns; yields the share done. open: pairs of orders that stay open whatever the fit says. plan: how the run
 * is cut up, if not so that most orders can be parted.
 */
export function* readRun(
  run: Run,
  input: AttributionInput,
  angle: ShaftAngle,
  scale: number,
  open: readonly Coincidence[],
  plan: BlockPlan = planBlocks(run, input.parts, input.reference.looseness),
): Generator<number, RunReading> {
  const { reference, filter } = input;
  const { blocks, unparted, every = 1 } = plan;
  const seen = run.lines.filter(({ observable }) => observable);
  const turns = (run.wheelTurns * reference.perWheelTurn) / blocks;
  const columns = fitColumns(seen, turns);
  const above = filter === null ? run.lines.filter((line) => !line.observable && foldsBack(line, run, input)) : [];
  const folding = fitColumns(above, turns);
  const fit = yield* fitRun(run, angle, columns, folding, blocks, scale, every);
  const part = fit.places.length / blocks;
  const heard = believed(input);
  const folded = fit.folded.map((course): MeasuredFold => {
    const evidence = evidenceOf(
      course.blocks.map((packed) => squareOrNull(packed.unpacked())),
      fit,
      part * run.count,
      heard,
    );
    const frequency = course.frequencies.reduce((sum, f) => sum + f / course.frequencies.length, 0);
    return { lines: course.column.lines, share: evidence.share, presence: evidence.noiseUnits > 0 ? presence(evidence) : 0, frequency };
  });
  const measured = columns.map((column, j) => {
    const overlaid = blocksOverlaid(fit, folded, j);
    const course = fit.columns[j];
    const shown = (noisy: readonly NoisyBlock[]) => noisy.filter((_, i) => !overlaid.has(course?.places[i] as number));
    const meanSquares = course?.blocks.map((packed) => squareOrNull(shown(packed.unpacked()))) ?? [];
    const accelerations =
      course?.blocks.map((packed, channel) => {
        const times = DERIVATIVES[input.channels[channel]?.quantity ?? "acceleration"];
        if (times === 0) return meanSquares[channel] ?? null;
        return squareOrNull(shown(packed.unpacked().map((block, i) => asAcceleration(block, course.frequencies[i] as number, times))));
      }) ?? [];
    return { column, meanSquares, accelerations, evidence: evidenceOf(meanSquares, fit, part * run.count, heard) };
  });
  const known = { rate: input.channels[0]?.samples.rate ?? 0, scale, seconds: run.duration / blocks };
  const shadowOn = (column: FitColumn, j: number): MeasuredColumn["shadow"] => {
    const shadows = reference.looseness > 0 ? foldShadows(fit, column, reference, known) : [];
    if (shadows.length === 0) return null;
    const course = fit.columns[j];
    const hidden = (place: number): boolean => shadows.some(({ blocks: own }) => own.has(place));
    const free =
      course?.blocks.map((packed) => squareOrNull(packed.unpacked().filter((_, i) => !hidden(course.places[i] as number)))) ?? [];
    const evidence = evidenceOf(free, fit, part * run.count, heard);
    return {
      lines: shadows.flatMap(({ fold }) => fit.folded[fold]?.column.lines ?? []),
      presence: evidence.noiseUnits > 0 ? presence(evidence) : 0,
    };
  };
  const chances: CauseProbabilities = causeProbabilities(measured.map(({ evidence }) => evidence));
  return {
    fit,
    columns: measured.map(({ column, meanSquares, accelerations, evidence }, j) => ({
      column,
      meanSquares,
      accelerations,
      share: Math.min(1, Math.max(0, evidence.share)),
      u: evidence.u,
      presence: presence(evidence),
      probability: chances.orders[j] as number,
      shadow: shadowOn(column, j),
    })),
    folded,
    none: chances.none,
    unparted: [...unparted, ...open],
    unexplainedShare: meanOver(heard, (channel) =>
      (fit.squares[channel] as number) > 0 ? Math.min(1, (fit.residualSquares[channel] as number) / (fit.squares[channel] as number)) : 1,
    ),
  };
}

const squareOrNull = (noisy: readonly NoisyBlock[]): MeanSquare | null => (noisy.length === 0 ? null : meanSquareOf(noisy));

/** Odds of some 400 to 1. */
const SURELY = 6;

/** Blocks of a column on which an order above half the rate lies that is surely there: what they hold is not the column's. */
const blocksOverlaid = ({ folded: courses }: RunFit, folded: readonly MeasuredFold[], j: number): ReadonlySet<number> =>
  new Set(courses.flatMap(({ hiddenBehind }, i) => ((folded[i]?.presence ?? 0) > SURELY ? (hiddenBehind.get(j) ?? []) : [])));

/** Whether an order above half the recording's rate could show somewhere below it. */
export const foldsBack = (line: OrderLine, run: Run, { channels }: AttributionInput): boolean =>
  line.perTurn * run.speeds.middle > (channels[0]?.samples.rate ?? 0) / 2;

const KINDS = ["acceleration", "velocity", "displacement", "sound"] as const;

/** Channels of the first kind there is: accelerations and sounds do not add up. */
export function believed({ channels }: AttributionInput): readonly number[] {
  const kind = KINDS.find((one) => channels.some(({ quantity }) => quantity === one));
  return channels.flatMap(({ quantity }, i) => (quantity === kind ? [i] : []));
}

const meanOver = (channels: readonly number[], value: (channel: number) => number): number =>
  channels.reduce((sum, channel) => sum + value(channel) / channels.length, 0);

/** Another place for the sensor gives other shares: two that differ by less than about this are alike (common practice, no source). */
const ALIKE = 0.1;

/** Shares are of each channel's own sum of squares, and the channels count alike. */
function evidenceOf(meanSquares: readonly (MeanSquare | null)[], fit: RunFit, samples: number, heard: readonly number[]): OrderEvidence {
  let [share, variance, noiseUnits, count, freedom] = [0, 0, 0, 0, 0];
  for (const channel of heard) {
    const found = meanSquares[channel];
    const total = fit.squares[channel] as number;
    if (!found || !(total > 0)) continue;
    // A block in which the order does not show has none of its energy.
    const toShare = ((samples / 2) * (found.blocks / fit.places.length)) / total / heard.length;
    share += found.value * toShare;
    variance += (found.u * toShare) ** 2;
    noiseUnits += found.noiseUnits;
    count += found.blocks;
    freedom += found.freedom;
  }
  return {
    share,
    u: Math.hypot(Math.sqrt(variance), ALIKE * share),
    noiseUnits,
    blocks: Math.max(1, count),
    freedom: Math.max(1, freedom),
  };
}
