import type { Contribution, CourseOfOrder } from "./attribution.js";
import type { Evidence } from "./evidence.js";
import type { Reading } from "./follow-speed.js";
import type { AttributionInput } from "./input.js";
import { amplitudeOf } from "./line-amplitude.js";
import { type OrderLine, type PartOrderName, sameOrder } from "./order-lines.js";
import { foldsBack, type RunReading } from "./read-run.js";
import { foldedFrequency } from "./sensor-checks.js";
import { asAcceleration, DERIVATIVES } from "./to-acceleration.js";

/** Probability of a line over all readings; lines of one column share theirs evenly. */
export type ProbabilityOf = (line: PartOrderName) => number;

/** Index of the column that holds a line; -1 where none does. */
export const columnOf = ({ columns }: RunReading, line: PartOrderName): number =>
  columns.findIndex(({ column }) => column.lines.some((other) => sameOrder(other, line)));

/** Probabilities, 0 to 1, from runs and the readings (as many) that they were fitted at. */
export const probabilitiesOf =
  (runs: readonly RunReading[], readings: readonly Reading[]): ProbabilityOf =>
  (line) =>
    runs.reduce((sum, run, i) => {
      const found = run.columns[columnOf(run, line)];
      return found === undefined ? sum : sum + ((readings[i]?.weight ?? 0) * found.probability) / found.column.lines.length;
    }, 0);

/** What is said of every order of every part. Amplitudes and shares are those of the likeliest reading. */
export function contributionsOf(evidence: Evidence, probability: ProbabilityOf, strongest: number): readonly Contribution[] {
  const { input, run, readings } = evidence;
  const [best] = readings;
  return run.lines.map((line): Contribution => {
    const { part, order, lowest, highest, observable } = line;
    const j = columnOf(best, line);
    const found = best.columns[j];
    if (!observable || found === undefined)
      return { part, order, lowest, highest, observable: false, foldsTo: foldOf(line, evidence), ...NOTHING };
    return {
      part,
      order,
      lowest,
      highest,
      observable,
      foldsTo: null,
      amplitudes: found.accelerations.map((square, channel) =>
        square === null || input.channels[channel]?.quantity === "sound" ? null : amplitudeOf(square),
      ),
      together: found.column.lines.filter((other) => !sameOrder(other, line)).map((other) => ({ part: other.part, order: other.order })),
      share: found.share,
      probability: probability(line),
      course: courseOf(best, j, strongest, input),
    };
  });
}

const NOTHING = { amplitudes: [], together: [], share: null, probability: null, course: null } as const;

function foldOf(line: OrderLine, { input, run }: Evidence): number | null {
  if (input.filter !== null || !foldsBack(line, run, input)) return null;
  return foldedFrequency(line.perTurn * run.speeds.middle, input.channels[0]?.samples.rate ?? 0);
}

/** How a column went in one channel, as an acceleration; null where it showed in no block. */
export function courseOf({ fit }: RunReading, j: number, channel: number, { channels }: AttributionInput): CourseOfOrder | null {
  const course = fit.columns[j];
  const times = DERIVATIVES[channels[channel]?.quantity ?? "acceleration"];
  const blocks = course?.blocks[channel]?.unpacked().map((block, i) => asAcceleration(block, course.frequencies[i] as number, times));
  if (course === undefined || blocks === undefined || blocks.length === 0) return null;
  return {
    times: course.places.map((place) => fit.places[place]?.time ?? Number.NaN),
    frequencies: course.frequencies,
    amplitudes: blocks.map(({ amplitude }) => Math.hypot(amplitude.cosine, amplitude.sine)),
    phases: blocks.map(({ amplitude }) => Math.atan2(-amplitude.sine, amplitude.cosine)),
  };
}
