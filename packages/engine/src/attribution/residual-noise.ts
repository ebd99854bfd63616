import { type RealFft, realFft, transformSize } from "../signal/real-fft.js";
import { windowSamples, windowSums } from "../signal/window.js";

/** Power of what a fit has left over one block. */
export interface ResidualPower {
  /** Mean square per line as if the noise were white: the variance of white noise of that density, u^2. */
  readonly variance: Float64Array;
  /** Distance of the lines, Hz. */
  readonly spacing: number;
  /** Seconds in the block. */
  readonly duration: number;
}

/** The noise around an order. */
export interface LineNoise {
  readonly variance: number;
  /** Degrees of freedom of that variance. */
  readonly freedom: number;
}

/** A Hann window spreads the noise of one line over about so many (its noise bandwidth). */
const SPREAD = 1.5;
/** How far beyond an order's own frequencies its noise is looked at, and how near to an order the fit has taken noise away; lines of one over the duration. */
const REACH = 8;
const EMPTIED = 1.6;

/** Transforms of residuals, block by block; plans and windows are kept while the lengths stay the same. */
export function residualPowers(rate: number): (residual: Float64Array) => ResidualPower {
  const plans = new Map<number, RealFft>();
  let window: Float64Array = new Float64Array(0);
  let weighted = new Float64Array(0);
  let windowSquares = 0;
  return (residual) => {
    const size = transformSize(residual.length);
    const fft = plans.get(size) ?? realFft(size);
    plans.set(size, fft);
    if (window.length !== residual.length) {
      window = windowSamples("hann", residual.length);
      weighted = new Float64Array(residual.length);
      windowSquares = windowSums(window).squares;
    }
    for (let n = 0; n < residual.length; n++) weighted[n] = (residual[n] as number) * (window[n] as number);
    const { re, im } = fft(weighted);
    const variance = new Float64Array(re.length);
    for (let k = 0; k < re.length; k++) variance[k] = ((re[k] as number) ** 2 + (im[k] as number) ** 2) / windowSquares;
    return { variance, spacing: rate / size, duration: residual.length / rate };
  };
}

/** Frequencies in Hz that an order runs through in a block. */
export interface Band {
  readonly low: number;
  readonly high: number;
}

/**
 * Noise about one order in one block, read from the residual around its frequencies: road noise is not white, and what counts is the noise where the order is.
 * Where an order stands nearly still, it and its neighbours have taken the noise of their own lines with them, and those lines are passed over.
 */
export function noiseAround(power: ResidualPower, own: Band, all: readonly Band[]): LineNoise {
  const line = 1 / power.duration;
  const still = all.filter(({ low, high }) => high - low < 3 * line);
  const last = power.variance.length - 2;
  // Where neighbours leave nothing nearby, look farther.
  for (let reach = REACH; reach <= 64 * REACH; reach *= 4) {
    let sum = 0;
    let lines = 0;
    const from = Math.max(1, Math.ceil((own.low - reach * line) / power.spacing));
    const to = Math.min(last, Math.floor((own.high + reach * line) / power.spacing));
    for (let k = from; k <= to; k++) {
      const frequency = k * power.spacing;
      if (frequency < EMPTIED * line || isEmptied(frequency, still, EMPTIED * line)) continue;
      sum += power.variance[k] as number;
      lines++;
    }
    const freedom = (2 * lines * power.spacing) / (SPREAD * line);
    if (freedom >= 4) return { variance: sum / lines, freedom };
  }
  let whole = 0;
  for (const v of power.variance) whole += v / power.variance.length;
  return { variance: whole, freedom: 2 };
}

function isEmptied(frequency: number, bands: readonly Band[], beside: number): boolean {
  for (const { low, high } of bands) if (frequency > low - beside && frequency < high + beside) return true;
  return false;
}
