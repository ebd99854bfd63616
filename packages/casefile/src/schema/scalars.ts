import { z } from "zod";

const ID = /^[a-z][a-z0-9-]*$/;
const JOINT_ID = /^[A-Za-z][A-Za-z0-9-]*$/;
const ISO_8601 = /^\d{4}-\d{2}-\d{2}(T\d{2}:\d{2}(:\d{2}(\.\d+)?)?(Z|[+-]\d{2}:\d{2})?)?$/;

const FINDING_CODE = /^[a-z-]+\.[a-z-]+$/;

/** What a pattern stands for, so that a problem can say it in words instead of showing the pattern. */
export const PATTERN_NAMES: ReadonlyMap<string, "id" | "joint-id" | "date" | "finding-code"> = new Map([
  [String(ID), "id"],
  [String(JOINT_ID), "joint-id"],
  [String(ISO_8601), "date"],
  [String(FINDING_CODE), "finding-code"],
]);

/** Lower-case id of a driveline, section, state or adjuster: it is typed on a command line and stands before a colon. */
export const id = z.string().max(60).regex(ID);
export const jointId = z.string().max(60).regex(JOINT_ID);
export const name = z.string().min(1).max(200);
export const text = z.string().max(20_000);
/** A day, or a day and time, as ISO 8601 writes it. */
export const moment = z.string().regex(ISO_8601);
export const findingCode = z.string().regex(FINDING_CODE);

/** What a display shows, without its sign: [0, 90). */
export const magnitudeDeg = z.number().min(0).lt(90);
/** A small signed angle: (-90, 90). */
export const signedDeg = z.number().gt(-90).lt(90);
/** From the source-end yoke to the driven-end yoke, right-hand about the power flow, modulo 180. */
export const phasingDeg = z.number().min(-180).max(180);
/** A length that has to be there: (0, 20 m]. */
export const positiveMm = z.number().gt(0).max(20_000);
/** A length that may be nought: [0, 20 m]. */
export const lengthMm = z.number().min(0).max(20_000);
/** A signed offset: +/- 20 m. */
export const offsetMm = z.number().min(-20_000).max(20_000);
export const ratio = z.number().gt(0).max(100);

export const vehicleSide = z.enum(["left", "right"]);
export const shaftEnd = z.enum(["driven-end", "source-end"]);
export const jointSide = z.enum(["source-side", "driven-side"]);

/** Things kept as they are written: other parts of the product define and read them. */
export const openObjects = z.array(z.looseObject({}));

/** A key that belongs to a sibling form; here it would be a mistake. */
export const notHere = z.never().optional();
