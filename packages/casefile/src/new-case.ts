import type { Case, CaseDriveline } from "./schema/case.js";
import { CASE_FORMAT, CASE_VERSION } from "./schema/case-schema.js";

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

const section = (id: string) => ({ id, phasingDeg: 0, phasingMeasured: false });
const cross = (id: string) => ({ id, kind: "cross" as const });
const hung = (id: string) => ({ ...cross(id), support: {} });

function drivelinesOf(layout: Layout): readonly CaseDriveline[] {
  switch (layout) {
    case "one-piece":
      return [rear([section("shaft")], [cross("J1"), cross("J2")])];
    case "two-piece":
      return [rear([section("front"), section("back")], [cross("J1"), hung("J2"), cross("J3")])];
    case "three-piece":
      return [rear([section("front"), section("middle"), section("back")], [cross("J1"), hung("J2"), hung("J3"), cross("J4")])];
    case "four-wheel-drive":
      return [rear([section("shaft")], [cross("J1"), cross("J2")]), front()];
  }
}

const rear = (sections: CaseDriveline["sections"], joints: CaseDriveline["joints"]): CaseDriveline => ({
  id: "rear",
  runs: "rearward",
  source: {},
  sections,
  driven: {},
  joints,
});

const front = (): CaseDriveline => ({
  id: "front",
  runs: "forward",
  source: {},
  sections: [section("shaft")],
  driven: {},
  joints: [{ id: "J1", kind: "double-cross" }, cross("J2")],
});
