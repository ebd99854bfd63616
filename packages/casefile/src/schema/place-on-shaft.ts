import type { CaseDriveline } from "./case.js";

/** Where a gauge sat: `source`, `driven`, SECTION, `SECTION:source-end` or `SECTION:driven-end`. */
export interface PlaceOnShaft {
  readonly shaft: string;
  readonly place: "along" | "source-end" | "driven-end";
}

/** Shaft ids that no section may take. */
export const RESERVED_IDS: readonly string[] = ["source", "driven"];

export const shaftsOf = (driveline: CaseDriveline): readonly string[] => [
  "source",
  ...driveline.sections.map((section) => section.id),
  "driven",
];

/** Every spelling of `at` that this driveline knows. */
export const placesOf = (driveline: CaseDriveline): readonly string[] =>
  shaftsOf(driveline).flatMap((shaft) => (RESERVED_IDS.includes(shaft) ? [shaft] : [shaft, `${shaft}:source-end`, `${shaft}:driven-end`]));

/** Splits `front:source-end` into the shaft and the place on it. The spelling has been checked before. */
export function placeOnShaft(at: string): PlaceOnShaft {
  const [shaft = at, end] = at.split(":");
  return { shaft, place: end === "source-end" || end === "driven-end" ? end : "along" };
}
