/** A length or arm of the case's own geometry, as the before and after gaugings correct the tape. Metres (rad/m for the axle's guides). */
export interface LearnedParameter {
  /** In ids, as the error sources: `length:SECTION`, `centre-to-joint`, `bearing:JOINT`, `pivot-up` and so on. */
  readonly of: string;
  readonly path: string;
  /** To be added to the value that was taped. */
  readonly shift: number;
  /** Standard uncertainty before and after. */
  readonly priorU: number;
  readonly u: number;
}

/** What was learned, with the covariance of all parameters in their order. */
export interface LearnedGeometry {
  readonly parameters: readonly LearnedParameter[];
  readonly covariance: readonly (readonly number[])[];
  /** Sum of squared misfits in units of their uncertainty, prior included, and how many readings there were: about equal when all is well. */
  readonly chiSquared: number;
  readonly readings: number;
}
