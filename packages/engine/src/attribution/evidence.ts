import type { FollowedSpeed } from "./follow-speed.js";
import type { AttributionInput } from "./input.js";
import type { RunReading } from "./read-run.js";
import type { Run } from "./run.js";
import type { SettledSlip } from "./settle-slip.js";

/** Everything that was measured, before anything is concluded. */
export interface Evidence {
  readonly input: AttributionInput;
  readonly run: Run;
  readonly followed: FollowedSpeed;
  readonly slip: SettledSlip["changing"];
  /** As many as followed.readings, the likeliest first. */
  readonly readings: readonly [RunReading, ...RunReading[]];
}
