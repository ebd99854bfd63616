import { degreesToRadians, type Metres, type Radians } from "../../units/index.js";
import type { LearnedGeometry } from "../learn/learned-geometry.js";
import type { Adjuster } from "./adjuster.js";
import type { CorrectionDriveline } from "./correction-driveline.js";
import type { VehicleState } from "./vehicle-state.js";

/** Side view of the powertrain: what it pivots about and where its rear mount stands, from the first joint centre of the case's first driveline. */
export interface Powertrain {
  readonly pivotForward: Metres;
  readonly pivotUp: Metres;
  readonly mountForward: Metres;
  readonly mountUp: Metres;
}

/** How well the geometry is known. Half widths of rectangular errors. */
export interface GeometryAccuracy {
  /** A length taken with the tape. */
  readonly tape: Metres;
  /** A stated pitch or wind-up of the axle. */
  readonly pitch: Radians;
}

/** A tape in the workshop reads to about 2 mm and a stated axle angle to a tenth of a degree: common practice, no source. */
export const DEFAULT_ACCURACY: GeometryAccuracy = { tape: 0.002 as Metres, pitch: degreesToRadians(0.1) };

/** Everything that predicting and planning need. */
export interface CorrectionInput {
  readonly drivelines: readonly CorrectionDriveline[];
  readonly powertrain: Powertrain | null;
  readonly adjusters: readonly Adjuster[];
  /** Empty = the vehicle as gauged. */
  readonly states: readonly VehicleState[];
  readonly accuracy: GeometryAccuracy;
  /** What earlier corrections of this vehicle taught about its lengths and arms; stands before the tape. */
  readonly learned?: LearnedGeometry;
  /** Monte Carlo draws behind every interval, and the seed that makes them repeatable. */
  readonly draws: number;
  readonly seed: number;
}
