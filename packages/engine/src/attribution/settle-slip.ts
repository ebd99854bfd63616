import type { Coincidence, RotatingPart } from "../orders/index.js";
import type { FollowedSpeed } from "./follow-speed.js";
import type { ReferenceShaft } from "./input.js";
import { type OrderLine, orderLines } from "./order-lines.js";
import { peaksNear, resolution, whitenedMap } from "./peaks.js";
import type { Run } from "./run.js";
import { sharesAhead, slipCourse } from "./slip-course.js";

/** Parts beyond a slipping converter or clutch, as fast as the vibration says. */
export interface SettledSlip {
  readonly parts: readonly RotatingPart[];
  readonly run: Run;
  /** Where it says nothing: orders of geared parts that a slipping one may lie on. */
  readonly coincidences: readonly Coincidence[];
  /** Between which shares of what is geared to the wheel a slip that changed ran ahead; null where it did not, or nobody could hear it. */
  readonly changing: { readonly least: number; readonly most: number } | null;
}

/** Half width of the share by which a part may turn faster or slower than its `perWheelTurn`: what its rate is less sure of than the wheel's. */
export function slipOf(part: RotatingPart, parts: readonly RotatingPart[]): number {
  const wheel = parts.find(({ part: name }) => name === "wheel");
  const share = ({ rate }: RotatingPart): number => rate.u / rate.value;
  if (wheel === undefined) return 0;
  const square = share(part) ** 2 - share(wheel) ** 2;
  // Squares of shares of a hundredth leave rounding of 1e-19.
  return square > 1e-15 ? Math.sqrt(3 * square) : 0;
}

/**
 * Finds by what factor all slipping parts turn faster than their middle: the one that puts the most clear lines, which no geared order explains, onto their
 * orders. Where there is none their place stays open, and each geared order within their reach may as well be theirs. Yields the share done.
 */
export function* settleSlip(
  run: Run,
  parts: readonly RotatingPart[],
  reference: ReferenceShaft,
  { angle, readings }: FollowedSpeed,
): Generator<number, SettledSlip> {
  const slipping = parts.filter((part) => slipOf(part, parts) > 0);
  if (slipping.length === 0) return { parts, run, coincidences: [], changing: null };
  const slips = (line: OrderLine): boolean => slipping.some(({ part }) => part === line.part);
  const most = Math.max(...slipping.map((part) => slipOf(part, parts)));
  const scale = readings[0]?.scale ?? 1;
  const seen = run.lines.filter(({ observable }) => observable);
  const [own, geared] = [seen.filter(slips), seen.filter((line) => !slips(line))];
  const map =
    own.length === 0
      ? null
      : yield* whitenedMap(
          run,
          angle,
          reference.perWheelTurn,
          seen.map(({ perTurn }) => perTurn * scale),
          most,
        );
  const perTurns = (those: readonly OrderLine[]): readonly number[] => those.map(({ perTurn }) => perTurn * scale);
  const range = map === null ? null : slipCourse(map, perTurns(own), perTurns(geared), most);
  const changing = range && sharesAhead(range, most);
  const tolerance = map === null ? 0 : resolution(map) / 2;
  const lines =
    map === null
      ? []
      : peaksNear(
          map,
          own.map(({ perTurn }) => perTurn * scale),
          most,
        );
  const free = lines.filter(({ order }) => geared.every(({ perTurn }) => Math.abs(perTurn * scale - order) > 2 * tolerance));
  const factors = free.flatMap((peak) =>
    own.map(({ perTurn }) => peak.order / (perTurn * scale)).filter((factor) => Math.abs(factor - 1) <= most),
  );
  const said = (factor: number): number =>
    free.reduce(
      (sum, peak) => (own.some(({ perTurn }) => Math.abs(perTurn * scale * factor - peak.order) < tolerance) ? sum + peak.clearness : sum),
      0,
    );
  const best = factors.reduce((top, factor) => (said(factor) > said(top) ? factor : top), factors[0] ?? Number.NaN);
  // What moves lies now on one geared order, now on another.
  const open = Number.isNaN(best) || range !== null ? within(own, geared, reference.perWheelTurn, most) : [];
  if (Number.isNaN(best)) return { parts, run, coincidences: open, changing };
  const moved = parts.map((part) => (slipping.includes(part) ? { ...part, perWheelTurn: part.perWheelTurn * best } : part));
  return {
    parts: moved,
    run: { ...run, lines: orderLines(moved, reference.perWheelTurn, run.speeds, run.limit) },
    coincidences: open,
    changing,
  };
}

/** A gear moves what slips and not what is geared to the wheel. */
function within(own: readonly OrderLine[], geared: readonly OrderLine[], perWheelTurn: number, most: number): readonly Coincidence[] {
  const name = ({ part, order }: OrderLine) => ({ part, order });
  return geared.flatMap((line) =>
    own.flatMap((slipping): readonly Coincidence[] => {
      const apart = Math.abs(line.perTurn / slipping.perTurn - 1);
      if (apart > most) return [];
      return [
        {
          first: name(line),
          second: name(slipping),
          separation: Math.abs(line.perTurn - slipping.perTurn) * perWheelTurn,
          wheelTurns: null,
          partedByGear: true,
        },
      ];
    }),
  );
}
