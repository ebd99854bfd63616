import type { ShaftPose } from "@halfturn/engine/geometry";
import { chainState, type Driveline, equivalentAngle, unevennessOf, wholeChain } from "@halfturn/engine/kinematics";
import { monteCarlo, normal, rectangular } from "@halfturn/engine/uncertainty";
import { degreesToRadians } from "@halfturn/engine/units";
import type { Benchmark } from "../benchmark.js";

const DRAWS = 20_000;

const DRIVELINE: Driveline = {
  id: "rear",
  joints: [
    { id: "J1", kind: "cross" },
    { id: "J2", kind: "cross" },
    { id: "J3", kind: "cross" },
  ],
  sections: [
    { id: "front", phasing: degreesToRadians(90), phasingMeasured: true },
    { id: "back", phasing: degreesToRadians(0), phasingMeasured: true },
  ],
};

/** Inclinations of source, front, back and driven: 3, 5 and 4 degrees between them. */
const INCLINATIONS = [2, 5, 10, 6].map(degreesToRadians);
const READING_HALF_WIDTH = degreesToRadians(0.1);
const HEADING_U = degreesToRadians(0.5);

/** The interval of the equivalent angle as `analyse` needs it: four rectangular inclinations, four normal headings. */
export const monteCarloThreeJoints: Benchmark = {
  name: "monte-carlo-three-joints",
  what: `equivalent angle of a three-joint chain, ${DRAWS} draws and its interval`,
  prepare: () => {
    const shafts = INCLINATIONS.length;
    const inputs = [
      ...INCLINATIONS.map((inclination) => rectangular(inclination, READING_HALF_WIDTH)),
      ...INCLINATIONS.map(() => normal(0, HEADING_U)),
    ];
    const model = (values: Float64Array): number => {
      const poses = INCLINATIONS.map((_, shaft) => ({ inclination: values[shaft], heading: values[shafts + shaft] }) as ShaftPose);
      return equivalentAngle(unevennessOf(wholeChain(chainState(DRIVELINE, poses))));
    };
    return () => monteCarlo({ inputs, model, draws: DRAWS, seed: 1 }).mean;
  },
};
