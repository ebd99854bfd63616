import type { FindingParams } from "../../findings/index.js";
import {
  type Adjuster,
  amountsOf,
  type CorrectionDriveline,
  type CorrectionInput,
  type Reason,
  type ReasonCode,
  reason,
  stepOf,
} from "../model/index.js";

/** An adjuster with its places looked up. */
export interface AdjusterModel {
  readonly adjuster: Adjuster;
  /** Amounts to choose from, rising, without nought. */
  readonly amounts: readonly number[];
  readonly step: number;
  /** Indices of the drivelines it moves. */
  readonly drivelines: readonly number[];
  /** Index of its joint or section in its driveline, else -1. */
  readonly place: number;
  readonly mounting: "below-crossmember" | "above-crossmember" | null;
  /** Its effect goes through the axle's guides. */
  readonly guided: boolean;
  /** Why it cannot be used, or null. */
  readonly unusable: Reason | null;
}

/** Looks up what an adjuster acts on and whether enough is known to compute it. `leftOut`: drivelines that the input no longer holds, as nothing may be said of them. */
export function adjusterModel(adjuster: Adjuster, input: CorrectionInput, leftOut: readonly string[] = []): AdjusterModel {
  const untold = adjuster.kind === "mount-spacer" ? leftOut[0] : leftOut.find((id) => id === adjuster.drivelineId);
  if (untold !== undefined) {
    return model(
      adjuster,
      [],
      -1,
      null,
      reason("correction.moves-refused-driveline", adjuster.path, { adjuster: adjuster.id, driveline: untold }),
    );
  }
  const all = input.drivelines.map((_, index) => index);
  if (adjuster.kind === "mount-spacer") {
    const unusable = input.powertrain ? null : reason("correction.powertrain-not-measured", adjuster.path, { adjuster: adjuster.id });
    return model(adjuster, all, -1, null, unusable);
  }
  const d = input.drivelines.findIndex(({ driveline }) => driveline.id === adjuster.drivelineId);
  const on = input.drivelines[d];
  if (!on) return model(adjuster, [], -1, null, reason("correction.unknown-driveline", adjuster.path, { driveline: adjuster.drivelineId }));
  const fail: Fail = (code, params = {}) =>
    model(adjuster, [d], -1, null, reason(code, adjuster.path, { adjuster: adjuster.id, ...params }));

  const use = (place = -1, mounting: AdjusterModel["mounting"] = null): AdjusterModel => model(adjuster, [d], place, mounting, null);
  switch (adjuster.kind) {
    case "axle-wedge":
      return on.axle?.steered && !on.axle.caster ? fail("correction.caster-not-given") : use();
    case "support-drop":
    case "support-shift":
      return onSupport(adjuster.jointId, on, use, fail);
    case "ride-height":
      return adjuster.pitchPerMetre === null && !on.axle?.guide ? fail("correction.axle-guide-not-measured") : use();
    case "link-length":
      return adjuster.pitchPerMetre === null && on.axle?.guide?.kind !== "links" ? fail("correction.axle-guide-not-measured") : use();
    case "rephase": {
      const section = on.driveline.sections.findIndex(({ id }) => id === adjuster.sectionId);
      if (section < 0) return fail("correction.unknown-section", { section: adjuster.sectionId });
      const unknown = on.driveline.sections[section]?.phasing == null;
      return unknown ? fail("correction.phasing-not-measured", { section: adjuster.sectionId }) : use(section);
    }
  }
}

type Fail = (code: ReasonCode, params?: FindingParams) => AdjusterModel;
type Use = (place: number, mounting: AdjusterModel["mounting"]) => AdjusterModel;

/** A support's move needs its joint, its bearing and every length of the driveline. */
function onSupport(jointId: string, { driveline, supports }: CorrectionDriveline, use: Use, fail: Fail): AdjusterModel {
  const joint = driveline.joints.findIndex(({ id }) => id === jointId);
  if (joint < 0) return fail("correction.unknown-joint", { joint: jointId });
  const support = supports.find((each) => each.jointId === jointId);
  if (!support || joint === 0 || joint === driveline.joints.length - 1) return fail("correction.support-not-given", { joint: jointId });
  const bare = driveline.sections.find(({ length }) => length === undefined);
  return bare ? fail("correction.length-not-measured", { section: bare.id }) : use(joint, support.mounted);
}

function model(
  adjuster: Adjuster,
  drivelines: readonly number[],
  place: number,
  mounting: AdjusterModel["mounting"],
  unusable: Reason | null,
): AdjusterModel {
  const guided = (adjuster.kind === "ride-height" || adjuster.kind === "link-length") && adjuster.pitchPerMetre === null;
  return { adjuster, amounts: amountsOf(adjuster, mounting), step: stepOf(adjuster), drivelines, place, mounting, guided, unusable };
}
