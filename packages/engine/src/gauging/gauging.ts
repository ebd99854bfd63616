import type { Metres, Radians } from "../units/index.js";

/** One reading against gravity, already turned into the sign of the chain frame: > 0 when the driven end is lower. */
export interface AbsoluteReading {
  readonly kind: "absolute";
  /** `source`, `driven` or a section id. */
  readonly shaft: string;
  /** Where on the shaft the gauge sat. `face`: a flange or yoke face across the shaft, read as degrees off plumb. */
  readonly place: "along" | "source-end" | "driven-end" | "face";
  readonly inclination: Radians;
  /** +1 where the gauge's own zero adds to the inclination, -1 where it subtracts: it turns over with the side the reader stands on. */
  readonly zeroSign: 1 | -1;
  readonly path: string;
}

/** A reading of shaft `to` with the gauge zeroed on shaft `from`: inclination of `to` minus inclination of `from`. The gauge's own zero cancels. */
export interface DifferenceReading {
  readonly kind: "difference";
  readonly from: string;
  readonly to: string;
  readonly inclination: Radians;
  /** As for an absolute reading; it matters only if the gauge was in truth not zeroed. */
  readonly zeroSign: 1 | -1;
  readonly path: string;
}

export type Reading = AbsoluteReading | DifferenceReading;

/** A reading of the turn-round check: display facing the reader, display-right lower is positive. The first and the turned one stand on the same spot. */
export interface ZeroCheckReading {
  readonly value: Radians;
  readonly path: string;
}

export interface Gauge {
  /** Full step of the display: a rectangular error of +/- half a step. */
  readonly resolution: Radians;
  /** Half width of the maker's error band: rectangular, independent for each placing of the gauge unless `common`. */
  readonly accuracy: Radians;
  /** The accuracy error is one and the same for all placings: it then acts as the gauge's zero. */
  readonly common: boolean;
  /** Pairs in order: first, turned, first, turned ... */
  readonly zeroCheck: readonly ZeroCheckReading[];
}

/** Plan-view direction of a shaft, positive toward chain +Y. */
export type HeadingReading =
  | {
      readonly kind: "offset";
      readonly shaft: string;
      /** Sideways offset of the driven end against the source end, positive toward chain +Y. */
      readonly lateral: Metres;
      /** Distance along the shaft over which the offset was taken. */
      readonly over: Metres;
      /** Half width of the error of the offset. */
      readonly accuracy: Metres;
      readonly path: string;
    }
  | {
      readonly kind: "angle";
      readonly shaft: string;
      readonly heading: Radians;
      /** Half width of the error of the angle. */
      readonly accuracy: Radians;
      readonly path: string;
    };

export type RideHeight = "normal" | "drooped" | "compressed" | "laden";
export type WheelSupport = "on-ground" | "on-drive-on-lift" | "axle-on-stands-at-ride-height" | "hanging";

/** One visit with the gauge: everything read on one driveline in one state of the vehicle. */
export interface Gauging {
  readonly rideHeight: RideHeight;
  readonly wheels: WheelSupport;
  readonly gauge: Gauge;
  readonly readings: readonly Reading[];
  readonly headings: readonly HeadingReading[];
  readonly path: string;
}
