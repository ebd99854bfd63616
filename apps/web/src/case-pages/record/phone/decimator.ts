/** Rate at which a sound is kept, samples per second: the orders of a driveline lie below half of it. */
const KEPT_RATE = 2000;
/** Taps for each sample left out: what lies above half the kept rate is down by more than 60 dB two thirds of an octave on. */
const TAPS_PER_FACTOR = 24;

/** By which whole number a sound's rate is divided, so that the rate kept is near 2000 per second and, where that can be, whole. */
export function decimationOf(rate: number): number {
  const nearest = Math.max(1, Math.floor(rate / KEPT_RATE));
  for (let factor = nearest; factor > nearest / 2; factor--) if (rate % factor === 0) return factor;
  return nearest;
}

/** A low-pass of `24 factor` taps for every `factor` samples: sinc to 0.4 of the kept rate, Blackman window. Source: Oppenheim and Schafer, Discrete-Time Signal Processing, section 7.5 (from memory). */
function lowPass(factor: number): Float64Array {
  const length = TAPS_PER_FACTOR * factor + 1;
  const cut = 0.4 / factor;
  const taps = Float64Array.from({ length }, (_, k) => {
    const t = k - (length - 1) / 2;
    const sinc = t === 0 ? 2 * cut : Math.sin(2 * Math.PI * cut * t) / (Math.PI * t);
    const place = (2 * Math.PI * k) / (length - 1);
    return sinc * (0.42 - 0.5 * Math.cos(place) + 0.08 * Math.cos(2 * place));
  });
  const sum = taps.reduce((total, tap) => total + tap, 0);
  return taps.map((tap) => tap / sum);
}

/** Takes a sound piece by piece and gives every `factor`-th sample of it, filtered so that nothing folds back. */
export function decimator(factor: number): (piece: Float32Array) => Float32Array {
  if (factor === 1) return (piece) => piece.slice();
  const taps = lowPass(factor);
  let held = new Float64Array(taps.length - 1);
  let next = 0;
  return (piece) => {
    const all = new Float64Array(held.length + piece.length);
    all.set(held);
    all.set(piece, held.length);
    const out: number[] = [];
    for (; next + taps.length <= all.length; next += factor) {
      let sum = 0;
      for (let k = 0; k < taps.length; k++) sum += (taps[k] as number) * (all[next + k] as number);
      out.push(sum);
    }
    const gone = Math.max(0, all.length - (taps.length - 1));
    held = all.slice(gone);
    next -= gone;
    return Float32Array.from(out);
  };
}
