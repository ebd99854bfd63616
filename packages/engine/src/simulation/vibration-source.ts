/** A vibration that goes with a rotating part. Amplitudes are accelerations in m/s^2 at the sensor, one gain per axis. */
export type VibrationSource = HarmonicSource | JointSource;

/** One order: unbalance, a tyre's harmonic, an engine's order. */
export interface HarmonicSource {
  readonly kind: "harmonic";
  readonly part: string;
  readonly order: number;
  /** Half peak to peak at the reference speed. */
  readonly amplitude: number;
  /** Grows with this power of speed: 2 for unbalance, 0 for none. */
  readonly speedPower: number;
  /** Rad at angle 0. */
  readonly phase: number;
  readonly gains: readonly number[];
  /** By what share its part runs ahead of what is geared to the wheel, as a slipping converter lets it: straight between moments in seconds; 0 when left out. */
  readonly ahead?: { readonly times: readonly number[]; readonly shares: readonly number[] };
}

/** The uneven turning of a chain of joints: all its even orders, growing with speed squared. */
export interface JointSource {
  readonly kind: "joint-angles";
  readonly part: string;
  /** Of the chain: unevennessOf(wholeChain(state)). */
  readonly unevenness: number;
  /** Acceleration at the sensor over angular acceleration of the driven end, m. */
  readonly lever: number;
  readonly gains: readonly number[];
}

/** A structure that rings at a frequency of its own: gain and delay of a single mass on a spring, 1 at standstill. */
export interface Resonance {
  /** Hz. */
  readonly frequency: number;
  /** Share of critical damping, (0, 1). */
  readonly damping: number;
  /** RMS of what the road alone makes it ring with, m/s^2; 0 = only orders excite it. */
  readonly roadRms: number;
}

/** Amplification and phase shift of a resonance at a frequency in Hz. */
export function resonantGain({ frequency, damping }: Resonance, at: number): { readonly gain: number; readonly shift: number } {
  const r = at / frequency;
  const re = 1 - r * r;
  const im = 2 * damping * r;
  return { gain: 1 / Math.hypot(re, im), shift: -Math.atan2(im, re) };
}
