import { degreesToRadians, type Radians } from "../units/index.js";
import type { Gauging, HeadingReading } from "./gauging.js";
import { LEAST_U, rectangularSource } from "./observation.js";
import type { ErrorSource } from "./pose-model.js";

/** Standard uncertainty of the plan-view direction of a shaft that nobody measured, taken as straight ahead. */
export const UNMEASURED_HEADING_U = degreesToRadians(0.5);

/** Plan-view direction of one shaft and the law of its errors. */
export interface HeadingEstimate {
  readonly heading: Radians;
  readonly measured: boolean;
  readonly sources: readonly ErrorSource[];
  /** Change of the heading with each source. */
  readonly by: readonly number[];
  /** Change of the heading with the inclination it was worked out with. */
  readonly byInclination: number;
}

interface OneHeading {
  readonly heading: number;
  readonly source: ErrorSource;
  readonly byInclination: number;
}

/** h = asin(lateral / (over cos i)); null where the offset is longer than the shaft. */
function oneHeading(reading: HeadingReading, inclination: number): OneHeading | null {
  const of = `heading:${reading.shaft}`;
  if (reading.kind === "angle") {
    return { heading: reading.heading, source: rectangularSource(reading.path, of, reading.accuracy), byInclination: 0 };
  }
  const reach = reading.over * Math.cos(inclination);
  const sine = reading.lateral / reach;
  if (!(Math.abs(sine) < 1)) return null;
  const heading = Math.asin(sine);
  const halfWidth = reading.accuracy / (reach * Math.cos(heading));
  return { heading, source: rectangularSource(reading.path, of, halfWidth), byInclination: Math.tan(heading) * Math.tan(inclination) };
}

const unmeasured = (shaft: string, path: string): HeadingEstimate => ({
  heading: 0 as Radians,
  measured: false,
  sources: [{ path, of: `heading:${shaft}`, shape: "normal", u: UNMEASURED_HEADING_U, origin: "assumed" }],
  by: [1],
  byInclination: 0,
});

/**
 * Heading of a shaft in radians, positive toward chain +Y, in (-pi/2, pi/2): the mean of its readings weighted by 1/u^2.
 * inclination: of that shaft, 0 where unknown. Without a reading, or where one of them is an offset longer than the shaft, it is 0 with u = 0.5 deg, assumed.
 */
export function headingOf(shaft: string, inclination: number, gauging: Gauging): HeadingEstimate {
  const taken = gauging.headings.filter((reading) => reading.shaft === shaft);
  const readings = taken.flatMap((reading) => oneHeading(reading, inclination) ?? []);
  if (readings.length === 0 || readings.length < taken.length) return unmeasured(shaft, gauging.path);
  const weights = readings.map(({ source }) => 1 / Math.max(source.u, LEAST_U) ** 2);
  const total = weights.reduce((sum, weight) => sum + weight, 0);
  const shares = weights.map((weight) => weight / total);
  const mean = (part: (reading: OneHeading) => number): number =>
    readings.reduce((sum, reading, k) => sum + (shares[k] ?? 0) * part(reading), 0);
  return {
    heading: mean(({ heading }) => heading) as Radians,
    measured: true,
    sources: readings.map(({ source }) => source),
    by: shares,
    byInclination: mean(({ byInclination }) => byInclination),
  };
}
