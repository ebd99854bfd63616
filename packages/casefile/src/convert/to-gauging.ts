import type { Gauge, Gauging, HeadingReading, Reading } from "@halfturn/engine/gauging";
import { degreesToRadians, type Metres, type Radians } from "@halfturn/engine/units";
import type { Case, CaseDriveline, CaseGauge, CaseHeading, CaseReading } from "../schema/case.js";
import { placeOnShaft } from "../schema/place-on-shaft.js";
import { itemAt } from "./item-at.js";
import { fromMillimetres } from "./lengths.js";
import { displaySign, endSign, lateralSign, zeroSign } from "./sides.js";

/** Half width of a sideways offset taken with a tape from a plumb line or a straight edge (common practice, no source). */
export const TAPE_ACCURACY_MM = 2;
/** Half width of a plan-view angle taken with a protractor or by sighting, where none is stated (common practice, no source). */
export const HEADING_ACCURACY_DEG = 0.2;

/** `gauging[index]` of a case as the engine knows it: words turned into signs of the chain frame, degrees into radians, millimetres into metres. */
export function toGauging(document: Case, index: number): Gauging {
  const gauging = itemAt(document.gauging, index, "gauging");
  const driveline = drivelineNamed(document, gauging.driveline);
  const path = `gauging[${index}]`;
  return {
    rideHeight: gauging.state.rideHeight,
    wheels: gauging.state.wheels,
    gauge: toGauge(gauging.gauge, `${path}.gauge`),
    readings: gauging.readings.map((reading, k) => toReading(reading, driveline, `${path}.readings[${k}]`)),
    headings: (gauging.headings ?? []).map((heading, k) => toHeading(heading, driveline, `${path}.headings[${k}]`)),
    path,
  };
}

/** Nought has no sign: a display of 0.0 with its end written down is plain 0, not -0. */
const signed = (sign: 1 | -1, size: number): number => (size === 0 ? 0 : sign * size);
const signedAngle = (sign: 1 | -1, deg: number): Radians => degreesToRadians(signed(sign, deg));

function drivelineNamed(document: Case, id: string): CaseDriveline {
  const driveline = document.drivelines.find((candidate) => candidate.id === id);
  if (!driveline) throw new RangeError(`no driveline ${id} in this case`);
  return driveline;
}

const toGauge = ({ resolutionDeg, accuracyDeg, common, zeroCheck }: CaseGauge, path: string): Gauge => ({
  resolution: degreesToRadians(resolutionDeg),
  accuracy: degreesToRadians(accuracyDeg),
  common: common ?? false,
  zeroCheck: (zeroCheck ?? []).map(({ deg, lower }, k) => ({
    value: signedAngle(displaySign(lower), deg),
    path: `${path}.zeroCheck[${k}]`,
  })),
});

function toReading(reading: CaseReading, { runs }: CaseDriveline, path: string): Reading {
  const sign = zeroSign(runs, reading.side);
  if ("between" in reading) {
    const [from, to] = reading.between;
    const inclination = signedAngle(endSign(reading.lower), reading.deg);
    return { kind: "difference", from: placeOnShaft(from).shaft, to: placeOnShaft(to).shaft, inclination, zeroSign: sign, path };
  }
  const { shaft, place } = placeOnShaft(reading.at);
  if ("face" in reading) {
    return {
      kind: "absolute",
      shaft,
      place: "face",
      inclination: signedAngle(endSign(reading.topLeans), reading.deg),
      zeroSign: sign,
      path,
    };
  }
  return { kind: "absolute", shaft, place, inclination: signedAngle(endSign(reading.lower), reading.deg), zeroSign: sign, path };
}

function toHeading(heading: CaseHeading, driveline: CaseDriveline, path: string): HeadingReading {
  const shaft = heading.of;
  const sign = heading.toward === undefined ? 1 : lateralSign(driveline.runs, heading.toward);
  if ("deg" in heading) {
    const accuracy = degreesToRadians(heading.accuracyDeg ?? HEADING_ACCURACY_DEG);
    return { kind: "angle", shaft, heading: signedAngle(sign, heading.deg), accuracy, path };
  }
  return {
    kind: "offset",
    shaft,
    lateral: fromMillimetres(signed(sign, heading.lateralMm)),
    over: overOf(heading.overMm, driveline, shaft),
    accuracy: fromMillimetres(heading.accuracyMm ?? TAPE_ACCURACY_MM),
    path,
  };
}

/** A section's offset without a distance of its own was taken over the section's length; a restored case has one or the other. */
function overOf(overMm: number | undefined, driveline: CaseDriveline, shaft: string): Metres {
  const over = overMm ?? driveline.sections.find(({ id }) => id === shaft)?.lengthMm;
  if (over === undefined) throw new RangeError(`no distance for the heading of ${shaft}`);
  return fromMillimetres(over);
}
