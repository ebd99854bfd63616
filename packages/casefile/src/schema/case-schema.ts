import { z } from "zod";
import { adjuster } from "./adjusters.js";
import { correction } from "./correction.js";
import { driveline } from "./driveline.js";
import { gauging } from "./gauging.js";
import { limits } from "./limits.js";
import { recording } from "./recording.js";
import { findingCode, id, moment, name, offsetMm, openObjects, signedDeg, text } from "./scalars.js";
import { complaint, vehicle } from "./vehicle.js";

export const CASE_FORMAT = "halfturn-case";
export const CASE_VERSION = 1;

/** A state of the vehicle to look at besides the one that was gauged; for one driveline, or for all when none is named. */
const state = z.object({
  id,
  label: text.optional(),
  driveline: id.optional(),
  /** As a ride-height amount: + = body higher over the axle than as gauged, - = lower. */
  axleTravelMm: offsetMm.optional(),
  pinionPitchDeg: signedDeg.optional(),
  load: z.enum(["none", "drive-torque", "coast-torque"]).optional(),
});

/** A stop finding that a person took responsibility for, and when. */
const acceptedFinding = z.object({
  code: findingCode,
  at: moment,
  by: text.optional(),
  reason: text.optional(),
});

/** The case file, version 1. Key order here is the order in which new keys are written. */
export const caseSchema = z.object({
  format: z.literal(CASE_FORMAT),
  version: z.literal(CASE_VERSION),
  id: name,
  title: text,
  createdAt: moment,
  updatedAt: moment.optional(),
  vehicle: vehicle.optional(),
  complaint: complaint.optional(),
  drivelines: z.array(driveline).min(1).max(8),
  limits: limits.optional(),
  states: z.array(state).max(50).optional(),
  gauging: z.array(gauging).max(200).optional(),
  acceptedFindings: z.array(acceptedFinding).max(200).optional(),
  adjusters: z.array(adjuster).max(100).optional(),
  recordings: z.array(recording).max(500).optional(),
  observations: openObjects.optional(),
  runouts: openObjects.optional(),
  balance: openObjects.optional(),
  corrections: z.array(correction).max(200).optional(),
  notes: text.optional(),
});
