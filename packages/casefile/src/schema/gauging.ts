import { z } from "zod";
import { id, lengthMm, magnitudeDeg, moment, name, notHere, phasingDeg, positiveMm, shaftEnd, text, vehicleSide } from "./scalars.js";
import { variant } from "./variant.js";

/** A display of 0.0 has no lower end, so `lower`, `topLeans` and `toward` may be left out then; any other value needs its word. */
const along = z.object({
  at: name,
  deg: magnitudeDeg,
  lower: shaftEnd.optional(),
  side: vehicleSide,
  notes: text.optional(),
  face: notHere,
  topLeans: notHere,
  between: notHere,
});

/** A face across the shaft, read as degrees off plumb. */
const acrossFace = z.object({
  at: name,
  face: z.literal("square"),
  deg: magnitudeDeg,
  topLeans: shaftEnd.optional(),
  side: vehicleSide,
  notes: text.optional(),
  lower: notHere,
  between: notHere,
});

/** The gauge zeroed on the first shaft and read on the second; `lower` says which end of the second is lower relative to the first. */
const between = z.object({
  between: z.tuple([name, name]),
  deg: magnitudeDeg,
  lower: shaftEnd.optional(),
  side: vehicleSide,
  notes: text.optional(),
  at: notHere,
  face: notHere,
  topLeans: notHere,
});

const reading = variant([along, acrossFace, between], (value) => {
  if (Object.hasOwn(value, "between")) return 2;
  const leans = Object.hasOwn(value, "topLeans") && !Object.hasOwn(value, "lower");
  return Object.hasOwn(value, "face") || leans ? 1 : 0;
});

const offsetHeading = z.object({
  of: name,
  /** Sideways offset of the driven end against the source end. */
  lateralMm: lengthMm,
  toward: vehicleSide.optional(),
  /** Distance along the shaft; a section without it takes its own length. */
  overMm: positiveMm.optional(),
  accuracyMm: positiveMm.optional(),
  notes: text.optional(),
  deg: notHere,
  accuracyDeg: notHere,
});

const angleHeading = z.object({
  of: name,
  deg: magnitudeDeg,
  toward: vehicleSide.optional(),
  accuracyDeg: z.number().gt(0).lt(90).optional(),
  notes: text.optional(),
  lateralMm: notHere,
  overMm: notHere,
  accuracyMm: notHere,
});

const heading = variant([offsetHeading, angleHeading], (value) => (Object.hasOwn(value, "deg") ? 1 : 0));

const gauge = z.object({
  label: text.optional(),
  /** Full step of the display. */
  resolutionDeg: z.number().gt(0).max(10),
  /** Half width of the maker's error band. */
  accuracyDeg: z.number().min(0).max(10),
  common: z.boolean().optional(),
  /** First, turned, first, turned, ... on one spot each. */
  zeroCheck: z
    .array(z.object({ deg: magnitudeDeg, lower: z.enum(["display-left", "display-right"]).optional() }))
    .max(20)
    .optional(),
});

export const stage = z.enum(["as-found", "after"]);

export const gauging = z.object({
  driveline: id,
  stage,
  takenAt: moment.optional(),
  state: z.object({
    rideHeight: z.enum(["normal", "drooped", "compressed", "laden"]),
    wheels: z.enum(["on-ground", "on-drive-on-lift", "axle-on-stands-at-ride-height", "hanging"]),
  }),
  gauge,
  readings: z.array(reading).max(200),
  headings: z.array(heading).max(100).optional(),
  /** Phasings as they were seen at this gauging; they stand before those of the driveline from here on. */
  phasings: z
    .array(z.object({ section: id, phasingDeg }))
    .max(5)
    .optional(),
  notes: text.optional(),
});
