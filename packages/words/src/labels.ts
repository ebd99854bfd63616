import type { BenchVerdict, Verdict } from "@halfturn/engine/analysis";
import type { RideHeight, WheelSupport } from "@halfturn/engine/gauging";
import type { JointKind } from "@halfturn/engine/kinematics";
import type { LimitSet, LimitSource } from "@halfturn/engine/limits";

/** The steps of the main flow. */
export type Step = "describe" | "record" | "isolate" | "gauge" | "explain" | "correct" | "prove" | "report";

/** What the limits are called, on a screen as on paper. */
type LimitNames = { readonly [Name in Exclude<keyof LimitSet, "jointAngle" | "minimumAngle">]: string } & {
  readonly jointAngle: (kind: string) => string;
  readonly minimumAngle: (kind: string) => string;
};

/** Short labels for tables, figures, the report and the terminal. */
export interface Labels {
  readonly verdicts: { readonly [V in Verdict]: string };
  readonly benchVerdicts: { readonly [V in BenchVerdict]: string };
  readonly stages: { readonly [S in "as-found" | "after"]: string };
  readonly steps: { readonly [S in Step]: string };
  readonly jointKinds: { readonly [K in JointKind]: string };
  readonly rideHeights: { readonly [R in RideHeight]: string };
  readonly wheelSupports: { readonly [W in WheelSupport]: string };

  readonly source: string;
  readonly driven: string;
  readonly driveline: string;
  readonly section: string;
  /** What the ids of a new case mean, behind the words above; nobody typed them. */
  readonly drivelineIds: Readonly<Record<"rear" | "front", string>>;
  readonly sectionIds: Readonly<Record<"shaft" | "front" | "middle" | "back", string>>;
  readonly sections: string;
  readonly shaft: string;
  readonly shafts: string;
  readonly joint: string;
  readonly joints: string;
  readonly supportBearing: string;
  readonly inclination: string;
  readonly heading: string;
  readonly operatingAngle: string;
  /** Narrow heading for an operating angle. */
  readonly angle: string;
  readonly interval95: string;
  readonly uncertainty: string;
  readonly minimum: string;
  readonly maximum: string;
  readonly limit: string;
  /** "up to 3.00°". */
  readonly upTo: (limit: string) => string;
  readonly limits: string;
  readonly limitNames: LimitNames;
  readonly limitSource: string;
  /** Set in the case, which gives no source; the key stands there. */
  readonly limitOfCase: (key: string) => string;
  readonly limitSources: { readonly [S in LimitSource]: string };
  readonly verdict: string;
  readonly cancellation: string;
  readonly equivalentAngle: string;
  readonly benchResidual: string;
  readonly phasing: string;
  readonly bestPhasing: string;
  readonly motion: string;
  readonly transmissionError: string;
  readonly secondOrder: string;
  readonly fourthOrder: string;
  readonly shaftSpeed: string;
  readonly drivenAcceleration: string;
  readonly sourceAccelerationCoast: string;
  readonly inertiaDrive: string;
  readonly inertiaCoast: string;
  readonly acceleration: string;
  readonly drive: string;
  readonly coast: string;
  readonly findings: string;
  readonly noFindings: string;
  readonly doNext: string;
  readonly repeatFirst: string;
  readonly shareOfUncertainty: string;

  readonly gauging: string;
  readonly gauge: string;
  readonly reading: string;
  readonly readings: string;
  readonly takenAt: string;
  readonly stage: string;
  readonly rideHeight: string;
  readonly wheels: string;
  readonly length: string;
  readonly kind: string;
  readonly drivenEndLower: string;
  readonly sourceEndLower: string;
  readonly level: string;
  readonly notKnown: string;

  /** Keys of a case file that nothing reads; they are kept as they are. */
  readonly keptKeys: (keys: string) => string;
  readonly case: string;
  readonly title: string;
  readonly vehicle: string;
  readonly complaint: string;
  readonly date: string;
  readonly notes: string;
  readonly before: string;
  readonly after: string;
  readonly change: string;
  readonly page: string;
  readonly cautions: string;

  readonly sideView: string;
  readonly planView: string;
  readonly front: string;
  readonly rear: string;
  readonly left: string;
  readonly right: string;
  readonly up: string;
}
