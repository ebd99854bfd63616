/**
 * What may have gone wrong with one reading, or with two.
 * lower-end: the wrong end was written as the lower one. side: read from the other side than written. rows-swapped: two readings in each other's
 * row. not-zeroed: a zeroed reading whose gauge was not zeroed. spot: up to about a degree from what the magnet sat on. misread: anything else.
 * zero-far-off: the gauge's own zero lies beyond `BELIEVABLE_ZERO`.
 */
export const SLIP_KINDS = ["lower-end", "side", "rows-swapped", "not-zeroed", "spot", "misread", "zero-far-off"] as const;

export type SlipKind = (typeof SLIP_KINDS)[number];

/** One explanation of a contradiction. */
export interface Slip {
  readonly kind: SlipKind;
  /** Which observations it calls wrong: indices, one or two of them. */
  readonly blames: readonly number[];
  /** Minus twice the logarithm of its evidence, up to a constant shared by all explanations: lower is likelier. */
  readonly cost: number;
  /** Sum of squared standardised residuals that stay after undoing it. */
  readonly misfit: number;
}
