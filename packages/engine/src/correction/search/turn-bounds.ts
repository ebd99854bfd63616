import type { CorrectionModel, DrivelineModel } from "../geometry/correction-model.js";
import { MOVE } from "../geometry/move-layout.js";
import type { Moves } from "../geometry/write-moves.js";

/** How far the numbers of one driveline's geometry reach over all draws: what bounds on movement need. Metres. */
export interface Reach {
  readonly shortest: readonly number[];
  readonly longest: readonly number[];
  /** b / (L - b) of each bearing at its largest, for the section it sits on. */
  readonly lever: readonly number[];
  readonly pivot: number;
  readonly arm: number;
  /** Horizontal distance of the mount from its pivot at its smallest, over the whole stock. */
  readonly mount: number;
  readonly guideError: number;
  readonly pad: number;
  readonly stateError: number;
}

/** Reads the extremes off all rows of a driveline's records; `largestSpacer` in metres, >= 0, bounds what is put under the mount. */
export function reachOf({ topology, input }: DrivelineModel, record: Float64Array, draws: number, largestSpacer: number): Reach {
  const { layout, joints: n, bearingSide } = topology;
  const rows = Array.from({ length: draws + 1 }, (_, row) => row * layout.stride);
  const at = (row: number, place: number): number => record[row + place] as number;
  const over = (value: (row: number) => number, pick: (a: number, b: number) => number): number =>
    rows.reduce((kept, row) => pick(kept, value(row)), value(0));
  const sections = Array.from({ length: n - 1 }, (_, k) => k);
  return {
    shortest: sections.map((k) => over((row) => at(row, layout.lengths + k), Math.min)),
    longest: sections.map((k) => over((row) => at(row, layout.lengths + k), Math.max)),
    lever: input.driveline.joints.map((_, j) => {
      const side = bearingSide[j] as number;
      if (side === 0 || j === 0 || j === n - 1) return 0;
      const section = side < 0 ? j - 1 : j;
      return over((row) => {
        const b = at(row, layout.bearings + j);
        return b / (at(row, layout.lengths + section) - b);
      }, Math.max);
    }),
    pivot: over((row) => Math.hypot(at(row, layout.powertrain), at(row, layout.powertrain + 1)), Math.max),
    arm: over((row) => Math.hypot(at(row, layout.arm), at(row, layout.arm + 1)), Math.max),
    mount: over((row) => {
      const x = at(row, layout.powertrain + 2);
      const z = Math.abs(at(row, layout.powertrain + 3)) + largestSpacer;
      const rest = x * x + at(row, layout.powertrain + 3) ** 2 - z * z;
      return rest > 0 ? Math.sqrt(rest) : 0;
    }, Math.min),
    guideError: over((row) => Math.abs(at(row, layout.guideError)), Math.max),
    pad: over((row) => 1 + Math.abs(at(row, layout.padError)), Math.max),
    stateError: over((row) => Math.max(0, ...stateErrors(row)), Math.max),
  };

  function stateErrors(row: number): readonly number[] {
    return Array.from({ length: layout.stride - layout.stateErrors }, (_, s) => Math.abs(at(row, layout.stateErrors + s)));
  }
}

/** The most by which changes can differ on one driveline. Absolute values, metres and radians. */
export interface MoveSpan {
  spacer: number;
  turn: number;
  guideTravel: number;
  /** Shift of the axle by all means but its turn. */
  axle: number;
  pad: number;
  /** Shift of the bearing or held joint, one a joint. */
  readonly supports: number[];
}

/** No difference at all, for so many joints. */
export const newMoveSpan = (joints: number): MoveSpan => ({
  spacer: 0,
  turn: 0,
  guideTravel: 0,
  axle: 0,
  pad: 0,
  supports: new Array<number>(joints).fill(0),
});

/** The share of a section's length below which a line between two moved centres is not let shrink when bounding. */
const SHORTENED = 0.8;

/**
 * The most by which each shaft can turn when moves differ by no more than `span`, in every draw; null where that is not proven.
 * Every step follows the placement: a line through two points that move by a and b turns by no more than asin((a + b) / its length); what is laid along it
 * at length L moves by no more than its own start and L times that turn; levers are the placement's own.
 */
export function turnBounds({ topology }: DrivelineModel, reach: Reach, span: MoveSpan): Float64Array | null {
  const { joints: n, slipSection, bearingSide, full } = topology;
  const turns = new Float64Array(n + 1);
  if (span.spacer > 0) {
    if (!(reach.mount > 0)) return null;
    turns[0] = span.spacer / reach.mount;
  }
  turns[n] = span.turn + reach.guideError * span.guideTravel;
  if (!full || n === 1) return turns;

  const centres = new Float64Array(n);
  centres[0] = (turns[0] as number) * reach.pivot;
  centres[n - 1] = (turns[n] as number) * reach.arm + span.axle + reach.pad * span.pad;
  const targets = targetBounds(bearingSide, reach, span, centres);
  if (!targets) return null;

  const line = (k: number, moved: number): boolean => {
    const sine = moved / (SHORTENED * (reach.shortest[k] as number));
    turns[k + 1] = Math.asin(Math.min(1, sine));
    return sine < 1;
  };
  for (let k = 0; k < slipSection; k++) {
    if (!line(k, (centres[k] as number) + (targets[k + 1] as number))) return null;
    centres[k + 1] = (centres[k] as number) + (reach.longest[k] as number) * (turns[k + 1] as number);
  }
  for (let k = n - 2; k > slipSection; k--) {
    if (!line(k, (centres[k + 1] as number) + (targets[k] as number))) return null;
    centres[k] = (centres[k + 1] as number) + (reach.longest[k] as number) * (turns[k + 1] as number);
  }
  return line(slipSection, (centres[slipSection] as number) + (centres[slipSection + 1] as number)) ? turns : null;
}

/** How far the joints' targets can move: the bearings' moves drawn out by their levers. Null where two bearings share a section, which has its own law. */
function targetBounds(bearingSide: readonly number[], reach: Reach, span: MoveSpan, centres: Float64Array): Float64Array | null {
  const n = centres.length;
  const targets = Float64Array.from(span.supports);
  targets[0] = centres[0] as number;
  targets[n - 1] = centres[n - 1] as number;
  for (let j = 1; j < n - 2; j++) if (bearingSide[j] === 1 && bearingSide[j + 1] === -1) return null;
  const draw = (j: number, side: -1 | 1): void => {
    const lever = reach.lever[j] as number;
    const usable = lever >= 0 && lever < 1;
    targets[j] = usable ? (targets[j] as number) * (1 + lever) + (targets[j + side] as number) * lever : Number.POSITIVE_INFINITY;
  };
  for (let j = 1; j < n - 1; j++) if (bearingSide[j] === -1) draw(j, -1);
  for (let j = n - 2; j > 0; j--) if (bearingSide[j] === 1) draw(j, 1);
  return targets;
}

/**
 * Whether, over the whole span of moves from the vehicle as gauged, no line between centres gets shorter than `SHORTENED` allows; the bounds rest on it.
 * Movements are bounded with the same law; a line of length L between points that move by a and b keeps at least L - a - b.
 */
export function linesStayLong(on: DrivelineModel, reach: Reach, wholeSpan: MoveSpan): boolean {
  const turns = turnBounds(on, reach, wholeSpan);
  if (!turns) return false;
  // asin x >= x, so the sine of the turn of each line is its (a + b) over the shortened length.
  return on.input.driveline.sections.every((_, k) => Math.sin(turns[k + 1] as number) * SHORTENED <= 1 - SHORTENED);
}

/** The largest moves that the states make by themselves, with nothing done. */
export function stateSpan(model: CorrectionModel, d: number, idle: Moves, reach: Reach): MoveSpan {
  const { topology } = model.drivelines[d] as DrivelineModel;
  const span = newMoveSpan(topology.joints);
  for (const move of idle[d] ?? []) {
    span.turn = Math.max(span.turn, Math.abs(move[MOVE.turn] as number) + reach.stateError);
    span.guideTravel = Math.max(span.guideTravel, move[MOVE.guideTravel] as number);
    span.axle = Math.max(span.axle, Math.hypot(move[MOVE.axleX] as number, move[MOVE.axleZ] as number));
  }
  return span;
}
