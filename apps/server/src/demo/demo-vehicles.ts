import type { CaseDriveline, CaseJoint, CaseSection } from "@halfturn/casefile";

const cross = (id: string): CaseJoint => ({ id, kind: "cross" });

/** A joint beside a bearing that hangs below a crossmember. */
const hung = (id: string): CaseJoint => ({
  ...cross(id),
  support: { bearingMounted: "below-crossmember", bearingToJointMm: 110, bearingIs: "source-side" },
});

const section = (id: string, lengthMm: number, phasingDeg: number | null): CaseSection => ({
  id,
  lengthMm,
  phasingDeg,
  phasingMeasured: phasingDeg !== null,
  tube: { outerDiameterMm: 88.9, wallMm: 2.1, material: "steel" },
});

const slip = { engagedMm: 80, minimumEngagedMm: 50, inwardTravelMm: 35 };

const axle: NonNullable<CaseDriveline["axle"]> = {
  centreToJointMm: 320,
  jointAboveCentreMm: 0,
  springPosition: "above-axle",
  steered: false,
  windUpDeg: { drive: 1, coast: 0.5 },
};

/** One shaft to a rear axle. */
export const onePiece = (lengthMm: number, phasingDeg: number | null = 0): CaseDriveline => ({
  id: "rear",
  runs: "rearward",
  source: { label: "Transmission output" },
  sections: [{ ...section("shaft", lengthMm, phasingDeg), slip }],
  driven: { label: "Rear pinion" },
  joints: [cross("J1"), cross("J2")],
  axle,
});

/** Two shafts with a support bearing between them. */
export const twoPiece = (frontMm: number, backMm: number, phasingDeg = 0): CaseDriveline => ({
  id: "rear",
  runs: "rearward",
  source: { label: "Transmission output" },
  sections: [section("front", frontMm, 0), { ...section("back", backMm, phasingDeg), slip }],
  driven: { label: "Rear pinion" },
  joints: [cross("J1"), hung("J2"), cross("J3")],
  axle,
});

/** A short shaft forward to a steered axle, with a double cross joint at the transfer case. */
export const frontShaft = (lengthMm: number): CaseDriveline => ({
  id: "front",
  runs: "forward",
  firstJoint: { forwardMm: 260, leftMm: 220, upMm: -40 },
  source: { label: "Transfer case front output" },
  sections: [{ ...section("shaft", lengthMm, 0), slip }],
  driven: { label: "Front pinion" },
  joints: [{ id: "J1", kind: "double-cross" }, cross("J2")],
  axle: { ...axle, steered: true, casterDeg: 3.5, casterMinimumDeg: 2, casterMaximumDeg: 5 },
});

const gears = (ratios: readonly number[]) => ratios.map((ratio, k) => ({ label: String(k + 1), ratio }));

export const VAN = {
  axleRatio: 3.9,
  gears: gears([4.2, 2.4, 1.5, 1.16, 1]),
  tyre: { size: "215/75R16" },
  cylinders: 4,
  maxShaftSpeedRpm: 4000,
};
export const TRUCK = {
  axleRatio: 4.1,
  gears: gears([6.2, 3.6, 2.2, 1.4, 1, 0.78]),
  tyre: { size: "235/75R17.5" },
  cylinders: 4,
  maxShaftSpeedRpm: 3400,
};
export const CROSS_COUNTRY = {
  axleRatio: 3.73,
  gears: gears([4.7, 2.6, 1.6, 1.2, 1]),
  transferRatio: 1,
  tyre: { size: "265/70R17" },
  cylinders: 6,
  maxShaftSpeedRpm: 3600,
};
