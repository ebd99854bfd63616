import { magnitudeOf, quantitiesOf, quantityIndex } from "@halfturn/engine/analysis";
import {
  benchSigns,
  orderAmplitude,
  peakAccelerationCoefficient,
  transmissionErrorPeakToPeak,
  unevennessOfAngle,
} from "@halfturn/engine/kinematics";
import { degreesToRadians, type Radians } from "@halfturn/engine/units";
import type { Benchmark } from "../benchmark.js";
import { threeJoints } from "./three-joints.js";

const CHAINS = 10_000;

/** Everything exact about one position of a chain, without uncertainty, for many positions. */
export const chainThreeJoints: Benchmark = {
  name: "chain-three-joints",
  what: `${CHAINS} three-joint chains in 3-D, all exact metrics of each`,
  prepare: () => {
    const n = threeJoints.joints.length;
    const { count, whole } = quantityIndex(n);
    const evaluate = quantitiesOf(threeJoints, benchSigns(threeJoints));
    const out = new Float64Array(2 * count);
    return () => {
      let sum = 0;
      for (let chain = 0; chain < CHAINS; chain++) {
        const poses = [2.4, 5.6, 5.1, 2.1].map((inclination, s) => ({
          inclination: degreesToRadians(inclination + chain * 1e-4),
          heading: degreesToRadians(s * 0.3 + chain * 1e-5),
        }));
        evaluate(poses, out);
        for (let place = 0; place < count; place++) {
          const uneven = unevennessOfAngle(magnitudeOf(n, place, out) as Radians);
          sum += peakAccelerationCoefficient(uneven);
          if (place === whole) sum += transmissionErrorPeakToPeak(uneven) + orderAmplitude(uneven, 1) + orderAmplitude(uneven, 2);
        }
      }
      return sum;
    };
  },
};
