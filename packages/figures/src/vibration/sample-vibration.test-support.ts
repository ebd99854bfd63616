import type { VibrationPicture } from "./vibration-picture.js";

const [ROWS, COLUMNS] = [24, 60];
const HIGHEST = 4.5;
const LEAST = 0.15;

/** For tests: a ridge at order 1 that grows, a weaker one at order 2, and a floor between. */
export const SAMPLE_VIBRATION: VibrationPicture = {
  channel: "accel_z_ms2",
  quantity: "acceleration",
  orders: [LEAST, HIGHEST],
  times: [0, 40],
  rows: ROWS,
  columns: COLUMNS,
  amplitudes: Float64Array.from({ length: ROWS * COLUMNS }, (_, k) => {
    const order = LEAST + (((k % COLUMNS) + 0.5) / COLUMNS) * (HIGHEST - LEAST);
    const grown = 0.4 + (0.6 * Math.floor(k / COLUMNS)) / ROWS;
    return grown * Math.exp(-(((order - 1) / 0.08) ** 2)) + 0.2 * Math.exp(-(((order - 2) / 0.08) ** 2)) + 0.02;
  }),
  marks: [
    { name: "Wheel 1", at: 0.27, amplitude: 0.03, share: 0.001, verdict: false },
    { name: "Wheel 2", at: 0.54, amplitude: null, share: null, verdict: false },
    { name: "Engine 1", at: 0.77, amplitude: 0.05, share: 0.01, verdict: false },
    { name: "Shaft 1", at: 1, amplitude: 0.98, share: 0.72, verdict: true },
    { name: "Shaft 2", at: 2, amplitude: 0.2, share: 0.04, verdict: false },
  ],
  folded: [
    {
      name: "Shaft 4",
      course: [
        { time: 0, at: 3.2 },
        { time: 20, at: 1.6 },
        { time: 40, at: 2.6 },
      ],
    },
  ],
};
