import type { Gauge } from "@halfturn/engine/gauging";
import { degreesToRadians, type Radians } from "@halfturn/engine/units";

/** Where the gauge is put, before anything is read. */
export type Spot =
  | {
      readonly kind: "absolute";
      readonly shaft: string;
      readonly place: "along" | "source-end" | "driven-end" | "face";
      readonly zeroSign: 1 | -1;
    }
  | { readonly kind: "difference"; readonly from: string; readonly to: string; readonly zeroSign: 1 | -1 };

/** A way of gauging a driveline that a careful technician would choose. */
export interface Layout {
  readonly name: string;
  readonly shafts: readonly string[];
  readonly spots: readonly Spot[];
  readonly zeroChecks: number;
  readonly gauge: Omit<Gauge, "zeroCheck">;
}

const FAMILIES = [
  { name: "one-piece", sections: ["front"] },
  { name: "two-piece", sections: ["front", "back"] },
  { name: "three-piece", sections: ["front", "middle", "back"] },
] as const;

/** Source, both ends of every tube, driven; the sides are all one, or change from tube to tube. */
function absoluteSpots(shafts: readonly string[], mixed: boolean): readonly Spot[] {
  return shafts.flatMap((shaft, k): readonly Spot[] => {
    const zeroSign = mixed && k % 2 === 1 ? -1 : 1;
    if (shaft === "source" || shaft === "driven") return [{ kind: "absolute", shaft, place: "face", zeroSign }];
    return (["source-end", "driven-end"] as const).map((place) => ({ kind: "absolute", shaft, place, zeroSign }));
  });
}

const differenceSpots = (shafts: readonly string[]): readonly Spot[] =>
  shafts.slice(1).map((to, k) => ({ kind: "difference", from: shafts[k] as string, to, zeroSign: 1 }));

const WAYS = [
  { name: "one side", zeroChecks: 0, mixed: false, differences: false },
  { name: "one side, zero checked", zeroChecks: 1, mixed: false, differences: false },
  { name: "one side, zero checked, differences", zeroChecks: 1, mixed: false, differences: true },
  { name: "both sides, zero checked twice", zeroChecks: 2, mixed: true, differences: false },
  { name: "both sides, zero checked, differences", zeroChecks: 1, mixed: true, differences: true },
] as const;

const RESOLUTION = degreesToRadians(0.1);
export const ACCURACIES_DEG = [0.1, 0.2] as const;

/** Every family of driveline, gauged in every way with a 0.1 deg display of either accuracy. */
export const LAYOUTS: readonly Layout[] = FAMILIES.flatMap((family) =>
  WAYS.flatMap((way) =>
    ACCURACIES_DEG.map((accuracyDeg): Layout => {
      const shafts = ["source", ...family.sections, "driven"];
      return {
        name: `${family.name}, ${way.name}, ${accuracyDeg} deg`,
        shafts,
        spots: [...absoluteSpots(shafts, way.mixed), ...(way.differences ? differenceSpots(shafts) : [])],
        zeroChecks: way.zeroChecks,
        gauge: { resolution: RESOLUTION, accuracy: degreesToRadians(accuracyDeg) as Radians, common: false },
      };
    }),
  ),
);
