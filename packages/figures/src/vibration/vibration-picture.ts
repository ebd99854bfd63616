/** An order drawn over the map: a straight line, since the map runs over turns. */
export interface OrderMark {
  readonly name: string;
  /** Times per turn of the shaft on the axis. */
  readonly at: number;
  /** Half peak to peak in m/s^2; null where it is not known. */
  readonly amplitude: number | null;
  /** Of the vibration, 0 to 1; null where it is not known. */
  readonly share: number | null;
  readonly verdict: boolean;
}

/** Where an order above half the sampling rate would show: a curve, drawn as far as it lies on the map. */
export interface FoldedMark {
  readonly name: string;
  readonly course: readonly { readonly time: number; readonly at: number }[];
}

/** What the channel of a picture measures; `share`: of a full scale that is not known. */
export type PicturedQuantity = "acceleration" | "velocity" | "displacement" | "pressure" | "share";

/** What the picture of a recorded vibration is drawn from. */
export interface VibrationPicture {
  readonly channel: string;
  readonly quantity: PicturedQuantity;
  /** The least and the greatest order shown. */
  readonly orders: readonly [number, number];
  /** First and last moment, seconds. */
  readonly times: readonly [number, number];
  /** Rows from first to last moment, columns from the least to the greatest order, all of one size; half peak to peak in SI, row by row. */
  readonly rows: number;
  readonly columns: number;
  readonly amplitudes: Float64Array;
  readonly marks: readonly OrderMark[];
  readonly folded: readonly FoldedMark[];
}
