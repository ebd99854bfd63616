import { type Case, newCase } from "@halfturn/casefile";

/** For tests: a vehicle with a reduction in its transfer case and something on the engine's belt. */
export const LOW_RANGE: Case = {
  ...newCase({ id: "low-range", title: "Low range", layout: "four-wheel-drive", createdAt: "2026-01-01T00:00:00Z" }),
  vehicle: {
    axleRatio: 4.1,
    gears: [{ label: "3", ratio: 1.5 }],
    transferRatio: 1.16,
    tyre: { size: "255/75R17" },
    cylinders: 6,
    accessories: [{ id: "fan", label: "Fan", ratio: 1.25 }],
    slipShare: 0.04,
  },
  complaint: { speedKmh: [60, 80], gear: "3" },
};
