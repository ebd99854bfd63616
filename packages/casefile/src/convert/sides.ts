import type { RunsToward, VehicleSide } from "../schema/case.js";

/**
 * Where words of the vehicle become signs of the chain frame.
 *
 * Vehicle frame: X forward, Y left, Z up. Chain frame: X along the power flow, Z up, Y = Z x X.
 * - runs forward:  chain X =  vehicle X, so chain Y = Z x  X =  vehicle Y: left.
 * - runs rearward: chain X = -vehicle X, so chain Y = Z x -X = -vehicle Y: right.
 *
 * The gauge's zero. A gauge of zero z shows s = (true slope, display-right lower positive) + z; the turn-round check measures z in that sense.
 * A reader who looks along f, with Z up, has display-right at f x Z:
 * - from the vehicle's left they look to the right, f = -Y, and f x Z = -X: display-right is toward the rear;
 * - from the vehicle's right, f = +Y, and f x Z = +X: display-right is toward the front.
 * Inclination is positive with the driven end lower. If display-right is toward the driven end, the reading in that sense is s = i + z: the zero adds (+1);
 * if it is toward the source end, the reading in that sense is -s = i - z: the zero subtracts (-1). The driven end is the rear one where the shaft runs rearward:
 *
 * | runs     | read from left         | read from right        |
 * | rearward | right = driven end, +1 | right = source end, -1 |
 * | forward  | right = source end, -1 | right = driven end, +1 |
 *
 * A face across the shaft. The gauge has been turned a quarter about the very axis that its display looks along, so s is the clockwise turn seen by the reader, less
 * the quarter, plus the same z. A clockwise turn lowers display-right on a shaft and leans the top of its face toward display-right. Hence: the top leaning toward the
 * driven end means i > 0, and the zero has the sign of the table above, whichever way the gauge was turned.
 */
export const zeroSign = (runs: RunsToward, readFrom: VehicleSide): 1 | -1 => ((runs === "rearward") === (readFrom === "left") ? 1 : -1);

/** +1 where a side of the vehicle is chain +Y, -1 where it is chain -Y. */
export const lateralSign = (runs: RunsToward, side: VehicleSide): 1 | -1 => ((runs === "rearward") === (side === "right") ? 1 : -1);

/** +1 where the driven end is meant: inclination is positive with the driven end lower or, on a face, with the top leaning toward it. */
export const endSign = (end: "driven-end" | "source-end" | undefined): 1 | -1 => (end === "source-end" ? -1 : 1);

/** +1 where display-right is lower. */
export const displaySign = (lower: "display-left" | "display-right" | undefined): 1 | -1 => (lower === "display-left" ? -1 : 1);
