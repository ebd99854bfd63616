import type { ScalarModel, VectorModel } from "./monte-carlo.js";

/** A quantity by its estimate and standard uncertainty, in its unit. */
export interface UncertainQuantity {
  readonly value: number;
  readonly u: number;
}

export interface PropagationInput {
  readonly inputs: readonly UncertainQuantity[];
  /** Correlation coefficients of the inputs (symmetric, ones on the diagonal); independent unless given. */
  readonly correlation?: readonly (readonly number[])[] | undefined;
}

/** One output of a first-order propagation. */
export interface PropagatedOutput extends UncertainQuantity {
  /** Partial derivatives by the inputs, in their order. */
  readonly sensitivities: readonly number[];
  /** Share of the variance that each input brings; they sum to 1. A correlated input may bring a negative share. All 0 when u is 0. */
  readonly contributions: readonly number[];
}

export interface Propagation {
  readonly outputs: readonly PropagatedOutput[];
  /** Covariances of the outputs: row and column k is output k. */
  readonly covariance: readonly (readonly number[])[];
  /** Correlation coefficients of the outputs; 0 beside an output that is certain. */
  readonly correlation: readonly (readonly number[])[];
}

/** A cube root of the floating-point spacing balances truncation against rounding in a central difference. */
const RELATIVE_STEP = Math.cbrt(Number.EPSILON);
/** Small beside u, so that the derivative is that at the estimate and not a mean over +/- u. */
const STEP_PER_UNCERTAINTY = 2 ** -10;

/**
 * First-order propagation of uncertainty through a model of several outputs: values, standard uncertainties, covariances, shares.
 * It is exact for a linear model and misleads where the model bends within a standard uncertainty (near zero of a magnitude, say): use Monte Carlo there.
 * Throws RangeError when the correlation does not fit the inputs.
 * Source: JCGM 100:2008, 5.1.2 and 5.2.2 (one output), JCGM 102:2011, 6.2 (several).
 */
export function propagateVector({
  inputs,
  correlation,
  model,
  outputs,
}: PropagationInput & { readonly model: VectorModel; readonly outputs: number }): Propagation {
  if (correlation && !(correlation.length === inputs.length && correlation.every((row) => row.length === inputs.length))) {
    throw new RangeError("the correlation must have a row and a column for each input");
  }
  const { values, jacobian } = differentiate(inputs, model, outputs);
  // c_i u_i: what one standard uncertainty of an input does to an output.
  const effects = jacobian.map((row) => row.map((c, i) => c * (inputs[i] as UncertainQuantity).u));
  const spread = effects.map((row) => row.map((effect, i) => (correlation ? dot(correlation[i] as readonly number[], row) : effect)));
  const covariance = effects.map((row) => spread.map((other) => dot(row, other)));
  const u = covariance.map((row, k) => Math.sqrt(Math.max(0, row[k] as number)));
  return {
    outputs: values.map((value, k) => ({
      value,
      u: u[k] as number,
      sensitivities: jacobian[k] as readonly number[],
      contributions: (effects[k] as readonly number[]).map((effect, i) =>
        ratio(effect * (spread[k]?.[i] as number), (u[k] as number) ** 2),
      ),
    })),
    covariance,
    correlation: covariance.map((row, k) => row.map((c, l) => ratio(c, (u[k] as number) * (u[l] as number)))),
  };
}

/** First-order propagation through a model of one output; see `propagateVector`. */
export function propagate({ model, ...input }: PropagationInput & { readonly model: ScalarModel }): PropagatedOutput {
  const { outputs } = propagateVector({
    ...input,
    outputs: 1,
    model: (x, y) => {
      y[0] = model(x);
    },
  });
  return outputs[0] as PropagatedOutput;
}

const dot = (a: readonly number[], b: readonly number[]): number => a.reduce((sum, value, i) => sum + value * (b[i] as number), 0);
const ratio = (a: number, b: number): number => (b === 0 ? 0 : a / b);

/** Half the width of a central difference: a small part of u, more where rounding would eat it, yet never beyond u. */
function stepOf({ value, u }: UncertainQuantity): number {
  const forRounding = RELATIVE_STEP * Math.abs(value);
  if (u === 0) return forRounding || RELATIVE_STEP;
  return Math.min(u, Math.max(u * STEP_PER_UNCERTAINTY, forRounding));
}

/** Model values at the estimates, and the derivative of each output (row) by each input (column) by central differences. */
function differentiate(
  inputs: readonly UncertainQuantity[],
  model: VectorModel,
  outputs: number,
): { readonly values: readonly number[]; readonly jacobian: readonly (readonly number[])[] } {
  const at = (index: number, shifted: number): Float64Array => {
    const x = Float64Array.from(inputs, ({ value }, i) => (i === index ? shifted : value));
    const y = new Float64Array(outputs);
    model(x, y);
    return y;
  };
  const columns = inputs.map((input, i) => {
    const step = stepOf(input);
    const [above, below] = [input.value + step, input.value - step];
    const [high, low] = [at(i, above), at(i, below)];
    return Array.from(high, (value, k) => (value - (low[k] as number)) / (above - below));
  });
  return {
    values: Array.from(at(-1, 0)),
    jacobian: Array.from({ length: outputs }, (_, k) => columns.map((column) => column[k] as number)),
  };
}
