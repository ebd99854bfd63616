import type { Case, CaseDriveline } from "../schema/case.js";
import { CASE_FORMAT, CASE_VERSION } from "../schema/case-schema.js";
import { frontDriveline, rearDriveline } from "./built.js";

export const LAYOUTS = ["one-piece", "two-piece", "three-piece", "four-wheel-drive"] as const;
export type Layout = (typeof LAYOUTS)[number];

export interface NewCase {
  readonly id: string;
  readonly title: string;
  readonly layout: Layout;
  /** ISO 8601. */
  readonly createdAt: string;
}

/** An empty case for a layout: every shaft and joint in its place, phasings at their usual value and marked as not measured, nothing else claimed. */
export const newCase = ({ id, title, layout, createdAt }: NewCase): Case => ({
  format: CASE_FORMAT,
  version: CASE_VERSION,
  id,
  title,
  createdAt,
  updatedAt: createdAt,
  vehicle: {},
  complaint: {},
  drivelines: drivelinesOf(layout),
  gauging: [],
});

function drivelinesOf(layout: Layout): readonly CaseDriveline[] {
  switch (layout) {
    case "one-piece":
      return [rearDriveline(1)];
    case "two-piece":
      return [rearDriveline(2)];
    case "three-piece":
      return [rearDriveline(3)];
    case "four-wheel-drive":
      return [rearDriveline(1), frontDriveline()];
  }
}
