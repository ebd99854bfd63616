/** Numbers that come one stretch after another. */
export interface SampleBuffer {
  readonly push: (values: Float64Array) => void;
  /** All of them; the buffer is not used afterwards. */
  readonly whole: () => Float64Array;
}

/** Grows by doubling with what has come, and never by what a header promises. */
export function sampleBuffer(): SampleBuffer {
  let held = new Float64Array(1024);
  let length = 0;
  return {
    push: (values) => {
      if (length + values.length > held.length) {
        const larger = new Float64Array(Math.max(held.length * 2, length + values.length));
        larger.set(held.subarray(0, length));
        held = larger;
      }
      held.set(values, length);
      length += values.length;
    },
    whole: () => held.subarray(0, length),
  };
}
