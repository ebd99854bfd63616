import type { z } from "zod";
import type { caseSchema } from "./case-schema.js";

/** Readonly all the way down, and an optional key may be absent but never undefined. Keys of a sibling form are dropped. */
type Frozen<T> = T extends readonly unknown[]
  ? { readonly [K in keyof T]: Frozen<T[K]> }
  : T extends object
    ? { readonly [K in keyof T as [Exclude<T[K], undefined>] extends [never] ? never : K]: Frozen<Exclude<T[K], undefined>> }
    : T;

/** A case as its file spells it. Keys that the schema does not know are kept in the value and written back. */
export type Case = Frozen<z.infer<typeof caseSchema>>;

export type CaseVehicle = NonNullable<Case["vehicle"]>;
export type CaseComplaint = NonNullable<Case["complaint"]>;
export type CaseDriveline = Case["drivelines"][number];
export type CaseSection = CaseDriveline["sections"][number];
export type CaseJoint = CaseDriveline["joints"][number];
export type CaseAxle = NonNullable<CaseDriveline["axle"]>;
export type CaseLimits = NonNullable<Case["limits"]>;
export type CaseState = NonNullable<Case["states"]>[number];
export type CaseGauging = NonNullable<Case["gauging"]>[number];
export type CaseGauge = CaseGauging["gauge"];
export type CaseReading = CaseGauging["readings"][number];
export type CaseHeading = NonNullable<CaseGauging["headings"]>[number];
export type CaseAdjuster = NonNullable<Case["adjusters"]>[number];
export type CaseRecording = NonNullable<Case["recordings"]>[number];
export type CaseCorrection = NonNullable<Case["corrections"]>[number];
export type Stage = CaseGauging["stage"];
export type VehicleSide = CaseReading["side"];
export type RunsToward = CaseDriveline["runs"];
