import { z } from "zod";
import { id, jointId, jointSide, lengthMm, magnitudeDeg, name, offsetMm, phasingDeg, positiveMm, signedDeg, text } from "./scalars.js";

const end = z.object({ label: text.optional() });

const section = z.object({
  id,
  label: text.optional(),
  /** Joint centre to joint centre. */
  lengthMm: positiveMm.optional(),
  /** As found. Absent or null: not known. */
  phasingDeg: phasingDeg.nullable().optional(),
  phasingMeasured: z.boolean().optional(),
  tube: z.object({ outerDiameterMm: positiveMm, wallMm: positiveMm, material: name.optional() }).optional(),
  slip: z.object({ engagedMm: lengthMm.optional(), minimumEngagedMm: lengthMm.optional(), inwardTravelMm: lengthMm.optional() }).optional(),
});

const support = z.object({
  bearingMounted: z.enum(["below-crossmember", "above-crossmember"]).optional(),
  bearingToJointMm: lengthMm.optional(),
  bearingIs: jointSide.optional(),
});

/** How a double cross joint shares its angle between its halves. */
const centring = z.object({ crossesApartMm: positiveMm, ballFromCrossMm: lengthMm, ballFixedTo: jointSide });

const joint = z.object({
  id: jointId,
  kind: z.enum(["cross", "double-cross", "ball", "flexible"]),
  label: text.optional(),
  support: support.optional(),
  centring: centring.optional(),
  /** The largest angle that the joint's maker states. */
  statedAngleDeg: z.number().gt(0).lt(90).optional(),
});

/** Side-view geometry of what guides the axle, from the axle centre as gauged, vehicle forward and up. */
const link = z.object({ frameForwardMm: offsetMm, frameUpMm: offsetMm, axleForwardMm: offsetMm, axleUpMm: offsetMm });
const suspension = z.discriminatedUnion("kind", [
  z.object({ kind: z.literal("rate"), pinionPitchDegPerMm: z.number().min(-10).max(10) }),
  z.object({ kind: z.literal("leaf"), fixedEyeForwardMm: offsetMm, fixedEyeUpMm: offsetMm, shackleEyeForwardMm: offsetMm.optional() }),
  z.object({ kind: z.literal("links"), lower: link, upper: link }),
]);

const axle = z.object({
  label: text.optional(),
  centreToJointMm: positiveMm.optional(),
  jointAboveCentreMm: offsetMm.optional(),
  springPosition: z.enum(["above-axle", "below-axle"]).optional(),
  /** Of the spring pad, signed as a shaft's inclination; level when left out. */
  padInclinationDeg: signedDeg.optional(),
  steered: z.boolean().optional(),
  casterDeg: signedDeg.nullable().optional(),
  casterMinimumDeg: signedDeg.nullable().optional(),
  casterMaximumDeg: signedDeg.nullable().optional(),
  /** Magnitudes under forward drive and on overrun. */
  windUpDeg: z.object({ drive: magnitudeDeg, coast: magnitudeDeg }).optional(),
  suspension: suspension.optional(),
});

/** Power order: source, joint 1, section 1, joint 2, ..., joint n, driven. */
export const driveline = z.object({
  id,
  label: text.optional(),
  runs: z.enum(["rearward", "forward"]),
  /** First joint centre from the first joint centre of `drivelines[0]`. */
  firstJoint: z.object({ forwardMm: offsetMm, leftMm: offsetMm.optional(), upMm: offsetMm }).optional(),
  source: end.optional(),
  sections: z.array(section).max(5),
  driven: end.optional(),
  joints: z.array(joint).min(1).max(6),
  axle: axle.optional(),
});
