import { z } from "zod";
import { id, jointId, lengthMm, offsetMm, positiveMm, signedDeg, text } from "./scalars.js";
import { variant } from "./variant.js";

const sizesFirst = (key: string) => (value: Readonly<Record<string, unknown>>) => (Object.hasOwn(value, key) ? 0 : 1);

/** What the shop can lay hands on: a list of sizes, or a range in steps, against what stands now. Signed as the amount is; nought is always possible and need not be listed. */
const stockMm = variant(
  [z.object({ sizesMm: z.array(offsetMm).min(1).max(200) }), z.object({ minMm: offsetMm, maxMm: offsetMm, stepMm: positiveMm })],
  sizesFirst("sizesMm"),
);
const stockDeg = variant(
  [
    z.object({ sizesDeg: z.array(signedDeg).min(1).max(200) }),
    z.object({ minDeg: signedDeg, maxDeg: signedDeg, stepDeg: z.number().gt(0).lt(90) }),
  ],
  sizesFirst("sizesDeg"),
);

const common = {
  id,
  label: text.optional(),
  /** Labour weight of using it at all, in hours or any one measure kept through the case. */
  labour: z.number().min(0).max(1000).optional(),
  /** Cost of its parts, in the same measure. */
  parts: z.number().min(0).max(1000).optional(),
};

const inMm = { stock: stockMm, fittedMm: offsetMm.optional() };
/** Nose-up change of the pinion for each millimetre of amount. */
const pinionPitchDegPerMm = z.number().min(-10).max(10).optional();

/** + = pinion nose up. */
const axleWedge = z.object({
  kind: z.literal("axle-wedge"),
  ...common,
  driveline: id,
  stock: stockDeg,
  fittedDeg: signedDeg.optional(),
  padLengthMm: positiveMm.optional(),
  thinEdgeMm: lengthMm.optional(),
});

/** + = bearing lowered; a removal only up to what is fitted. */
const supportDrop = z.object({ kind: z.literal("support-drop"), ...common, driveline: id, joint: jointId, ...inMm });
/** + = bearing toward vehicle left. */
const supportShift = z.object({ kind: z.literal("support-shift"), ...common, driveline: id, joint: jointId, ...inMm });
/** + = rear of the powertrain raised; it moves the first joint of every driveline. */
const mountSpacer = z.object({ kind: z.literal("mount-spacer"), ...common, ...inMm });
/** + = body raised. */
const rideHeight = z.object({ kind: z.literal("ride-height"), ...common, driveline: id, ...inMm, pinionPitchDegPerMm });
/** Turns one half of a section on its spline; one step is 360 degrees / splineTeeth. */
const rephase = z.object({ kind: z.literal("rephase"), ...common, driveline: id, section: id, splineTeeth: z.int().min(4).max(400) });
/** + = link made longer. */
const linkLength = z.object({
  kind: z.literal("link-length"),
  ...common,
  driveline: id,
  link: z.enum(["lower", "upper"]),
  ...inMm,
  pinionPitchDegPerMm,
});

export const adjuster = z.discriminatedUnion("kind", [axleWedge, supportDrop, supportShift, mountSpacer, rideHeight, rephase, linkLength]);
