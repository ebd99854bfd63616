import { momentsOf, propagateVector } from "@halfturn/engine/uncertainty";
import { test } from "vitest";
import { expectWithin, halfUnit } from "./expect-within.js";

// JCGM 100:2008 (GUM), annex H.2: resistance, reactance and impedance from one set of five voltages, currents and phases.
// Raw data as in the open test file of a national laboratory's calculator, results as printed in the GUM and repeated in two sets of open tests.

const volts = Float64Array.of(5.007, 4.994, 5.005, 4.99, 4.999);
const milliamperes = Float64Array.of(19.663, 19.639, 19.64, 19.685, 19.678);
const phases = Float64Array.of(1.0456, 1.0438, 1.0468, 1.0428, 1.0433);

/** The correlations of the five sets to six digits; the GUM prints -0.36, 0.86 and -0.65. */
const [VI, VP, IP] = [-0.355311, 0.857624, -0.645111];

const inputs = [volts, milliamperes, phases].map((sample) => {
  const { mean, standardDeviation } = momentsOf(sample);
  return { value: mean, u: standardDeviation / Math.sqrt(sample.length) };
});
const { outputs, correlation } = propagateVector({
  inputs,
  correlation: [
    [1, VI, VP],
    [VI, 1, IP],
    [VP, IP, 1],
  ],
  outputs: 3,
  model: (x, y) => {
    const [voltage, current, phase] = x as unknown as [number, number, number];
    const impedance = (1000 * voltage) / current;
    y.set([impedance * Math.cos(phase), impedance * Math.sin(phase), impedance]);
  },
});

const THOUSANDTH = halfUnit(0.001);
/** The GUM prints u(X) = 0.295 where 0.2956 would round to 0.296: it worked with rounded inputs. */
const ROUNDED_INPUTS = 0.001;

test.each([
  ["mean voltage", inputs[0]?.value, 4.999, halfUnit(0.0001)],
  ["u of the voltage", inputs[0]?.u, 0.0032, halfUnit(0.0001)],
  ["mean current, mA", inputs[1]?.value, 19.661, halfUnit(0.0001)],
  ["u of the current, mA", inputs[1]?.u, 0.0095, halfUnit(0.0001)],
  ["mean phase", inputs[2]?.value, 1.04446, halfUnit(0.00001)],
  ["u of the phase", inputs[2]?.u, 0.00075, halfUnit(0.00001)],
  ["resistance", outputs[0]?.value, 127.732, THOUSANDTH],
  ["u of the resistance", outputs[0]?.u, 0.071, THOUSANDTH],
  ["reactance", outputs[1]?.value, 219.847, THOUSANDTH],
  ["u of the reactance", outputs[1]?.u, 0.295, ROUNDED_INPUTS],
  ["impedance", outputs[2]?.value, 254.26, THOUSANDTH],
  ["u of the impedance", outputs[2]?.u, 0.236, THOUSANDTH],
  ["r of resistance and reactance", correlation[0]?.[1], -0.588, THOUSANDTH],
  ["r of resistance and impedance", correlation[0]?.[2], -0.485, THOUSANDTH],
  ["r of reactance and impedance", correlation[1]?.[2], 0.993, ROUNDED_INPUTS],
])("%s", (_, actual, published, tolerance) => expectWithin(actual as number, published, tolerance));
