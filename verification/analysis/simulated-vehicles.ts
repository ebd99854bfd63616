import type { Case } from "@halfturn/casefile";
import type { Deviates } from "@halfturn/engine/uncertainty";
import { normalDeviates } from "@halfturn/engine/uncertainty";
import { degreesToRadians } from "@halfturn/engine/units";
import type { Placing } from "../gauging/simulate-gauging.js";
import { caseOf } from "./case-of.js";
import { readHeading, readSpot, type Spot, turnRoundCheck } from "./gauge-in-vehicle.js";
import { type Runs, shaftInVehicle, shaftsOf, type TrueDriveline } from "./true-driveline.js";

/** A kind of driveline; degrees. `fall`: driven end lower. `left`: driven end toward the vehicle's left. */
export interface Kind {
  readonly name: string;
  readonly runs: Runs;
  readonly sections: readonly string[];
  readonly fallDeg: readonly number[];
  readonly leftDeg: readonly number[];
  readonly phasingDeg: readonly number[];
}

export const KINDS: readonly Kind[] = [
  { name: "one-piece", runs: "rearward", sections: ["front"], fallDeg: [3, 6.5, 4.2], leftDeg: [0, 0.3, 0.1], phasingDeg: [0] },
  {
    name: "two-piece, a quarter turn",
    runs: "rearward",
    sections: ["front", "back"],
    fallDeg: [2.4, 5.6, 5.1, 2.1],
    leftDeg: [0, 0.1, -0.1, 0],
    phasingDeg: [90, 0],
  },
  {
    name: "three-piece, out of plane",
    runs: "forward",
    sections: ["front", "middle", "back"],
    fallDeg: [2, 4.5, 1, 5, 2.5],
    leftDeg: [0, 1.6, 2.4, 0.4, 0],
    phasingDeg: [0, 90, 0],
  },
  // 3, 5 and 4 degrees in line: a sum of 2, and next to nothing left.
  {
    name: "two-piece, cured",
    runs: "rearward",
    sections: ["front", "back"],
    fallDeg: [0.5, 3.5, -1.5, 2.5],
    leftDeg: [0, 0, 0, 0],
    phasingDeg: [0, 0],
  },
];

/** Degrees. The display's step, the maker's half width, the gauge's zero, and what headings are taken with; common figures of a digital inclinometer. */
const STEP_DEG = 0.1;
const ACCURACY_DEG = 0.1;
const ZERO_DEG = 0.3;
const HEADING_ACCURACY_DEG = 0.2;
/** Standard deviation of a heading that nobody measures, as the measurement model states it. */
const HEADING_SCATTER_DEG = 0.5;
/** Vehicles of one kind differ by up to half a step, so that readings do not all round the same way. */
const SPREAD_DEG = STEP_DEG / 2;

const within = (uniform: Deviates, halfWidth: number): number => halfWidth * (2 * uniform() - 1);

/** Another vehicle of a kind, and what a technician reads on it. */
export interface GaugedVehicle {
  readonly truth: TrueDriveline;
  readonly document: Case;
}

/** A source of gauged vehicles. Where headings are not measured they scatter about straight ahead, as the model takes them to. */
export function vehiclesOf(kind: Kind, headingsMeasured: boolean, uniform: Deviates): () => GaugedVehicle {
  const normal = normalDeviates(uniform);
  const placing: Placing = {
    place: (deg) => deg + within(uniform, ACCURACY_DEG),
    round: (deg) => STEP_DEG * Math.round(deg / STEP_DEG),
  };
  const gauge = { zeroDeg: ZERO_DEG, placing };
  return () => {
    const directions = kind.fallDeg.map((fallDeg, s) => {
      const leftDeg = headingsMeasured ? (kind.leftDeg[s] as number) : HEADING_SCATTER_DEG * normal();
      return shaftInVehicle(kind.runs, degreesToRadians(fallDeg + within(uniform, SPREAD_DEG)), degreesToRadians(leftDeg));
    });
    const truth: TrueDriveline = {
      ...kind,
      directions,
      phasings: kind.phasingDeg.map(degreesToRadians),
      lengthsMm: kind.sections.map(() => 1200),
    };
    const zeroCheck = turnRoundCheck(within(uniform, 3), gauge);
    const readings = spotsOf(kind).map((spot) => readSpot(truth, spot, gauge));
    const headings = headingsMeasured
      ? shaftsOf(truth).map((shaft) => readHeading(truth, shaft, "angle", HEADING_ACCURACY_DEG, within(uniform, HEADING_ACCURACY_DEG)))
      : [];
    return { truth, document: caseOf(truth, { resolutionDeg: STEP_DEG, accuracyDeg: ACCURACY_DEG, zeroCheck }, readings, headings) };
  };
}

/** Flanges on their faces and every tube at both ends; sides change from shaft to shaft. */
function spotsOf({ sections }: Kind): readonly Spot[] {
  return ["source", ...sections, "driven"].flatMap((shaft, s): readonly Spot[] => {
    const side = s % 2 === 0 ? "left" : "right";
    if (!sections.includes(shaft)) return [{ kind: "face", at: shaft, side }];
    return ["source-end", "driven-end"].map((end) => ({ kind: "along", at: `${shaft}:${end}`, side }));
  });
}
