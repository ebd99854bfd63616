import { type Distribution, samplerOf } from "./distribution.js";
import { type JointNormal, jointNormalSampler } from "./joint-normal.js";
import type { LongWork } from "./long-work.js";
import { type Deviates, normalDeviates, uniformDeviates } from "./random.js";
import { type SampleSummary, summariseSample } from "./sample-summary.js";

/** One input quantity, or several that are normal together and fill as many places. */
export type InputQuantity = Distribution | JointNormal;

/** One output from the inputs, in the order of their places. The buffer is reused: do not keep it. */
export type ScalarModel = (inputs: Float64Array) => number;

/** Several outputs from the inputs, written to `outputs`. Both buffers are reused: do not keep them. */
export type VectorModel = (inputs: Float64Array, outputs: Float64Array) => void;

export interface DrawOptions extends LongWork {
  readonly inputs: readonly InputQuantity[];
  /** Number of Monte Carlo trials, at least 2. */
  readonly draws: number;
  readonly seed: number;
}

export interface MonteCarloOptions extends DrawOptions {
  readonly model: ScalarModel;
  /** Coverage probability of the intervals, 0.95 unless given. */
  readonly coverage?: number | undefined;
}

export interface VectorDrawOptions extends DrawOptions {
  readonly model: VectorModel;
  /** How many outputs the model writes. */
  readonly outputs: number;
}

/** Trials between two looks at the signal: a model of 0.1 ms still stops within 30 ms. */
const TRIALS_PER_LOOK = 256;

/**
 * Propagates distributions through a model of one output: mean, standard deviation, symmetric and shortest interval, in the output's unit.
 * Same seed, same result. Throws RangeError when the model gives a value that is not finite, or when the draws are too few for the coverage.
 * Source: JCGM 101:2008, section 7 (draws fixed beforehand, 7.2.1).
 */
export function monteCarlo({ model, coverage, ...options }: MonteCarloOptions): SampleSummary {
  const [sample] = drawOutputs({
    ...options,
    outputs: 1,
    model: (inputs, outputs) => {
      outputs[0] = model(inputs);
    },
  });
  return summariseSample(sample as Float64Array, coverage);
}

/**
 * The raw draws of a model's outputs: one array per output, in the order of the trials, for correlations or regions of several outputs.
 * Throws RangeError when the model gives a value that is not finite, and what the signal throws when it is aborted.
 * Source: JCGM 101:2008, 7.3 and 7.4; JCGM 102:2011, 7.
 */
export function drawOutputs({ inputs, model, outputs, draws, seed, signal, onProgress }: VectorDrawOptions): readonly Float64Array[] {
  if (!(Number.isInteger(draws) && draws >= 2)) throw new RangeError(`draws must be a whole number of at least 2, got ${draws}`);
  const { fill, size } = inputFiller(inputs, seed);
  const input = new Float64Array(size);
  const output = new Float64Array(outputs);
  const samples = Array.from({ length: outputs }, () => new Float64Array(draws));
  for (let trial = 0; trial < draws; trial++) {
    if (trial % TRIALS_PER_LOOK === 0) {
      signal?.throwIfAborted();
      onProgress?.(trial / draws);
    }
    fill(input);
    model(input, output);
    for (let k = 0; k < outputs; k++) {
      const value = output[k] as number;
      if (!Number.isFinite(value)) throw new RangeError(`the model gave ${value} for output ${k} at draw ${trial}`);
      (samples[k] as Float64Array)[trial] = value;
    }
  }
  onProgress?.(1);
  return samples;
}

/** How many places the inputs take, and a function that draws all of them. */
function inputFiller(
  inputs: readonly InputQuantity[],
  seed: number,
): { readonly size: number; readonly fill: (out: Float64Array) => void } {
  const uniform = uniformDeviates(seed);
  const standardNormal = normalDeviates(uniform);
  const single: { readonly at: number; readonly draw: Deviates }[] = [];
  const joint: { readonly at: number; readonly draw: (out: Float64Array, at: number) => void }[] = [];
  let size = 0;
  for (const input of inputs) {
    if (input.shape === "joint-normal") {
      joint.push({ at: size, draw: jointNormalSampler(input, standardNormal) });
      size += input.values.length;
    } else {
      single.push({ at: size, draw: samplerOf(input, uniform, standardNormal) });
      size += 1;
    }
  }
  const fill = (out: Float64Array): void => {
    for (const { at, draw } of single) out[at] = draw();
    for (const { at, draw } of joint) draw(out, at);
  };
  return { size, fill };
}
