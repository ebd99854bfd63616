import { type Adjuster, amountsOf, type CorrectionInput, type Reason, reason, stepOf } from "../model/index.js";

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

/** Looks up what an adjuster acts on and whether enough is known to compute it. */
export function adjusterModel(adjuster: Adjuster, input: CorrectionInput): AdjusterModel {
  const all = input.drivelines.map((_, index) => index);
  if (adjuster.kind === "mount-spacer") {
    const unusable = input.powertrain ? null : reason("correction.powertrain-not-measured", adjuster.path, { adjuster: adjuster.id });
    return model(adjuster, all, -1, null, unusable);
  }
  const d = input.drivelines.findIndex(({ driveline }) => driveline.id === adjuster.drivelineId);
  const on = input.drivelines[d];
  if (!on) return model(adjuster, [], -1, null, reason("correction.unknown-driveline", adjuster.path, { driveline: adjuster.drivelineId }));
  const fail = (code: Parameters<typeof reason>[0], params = {}): AdjusterModel =>
    model(adjuster, [d], -1, null, reason(code, adjuster.path, { adjuster: adjuster.id, ...params }));

  switch (adjuster.kind) {
    case "axle-wedge":
      return on.axle?.steered && !on.axle.caster ? fail("correction.caster-not-given") : model(adjuster, [d], -1, null, null);
    case "support-drop":
    case "support-shift": {
      const joint = on.driveline.joints.findIndex(({ id }) => id === adjuster.jointId);
      if (joint < 0) return fail("correction.unknown-joint", { joint: adjuster.jointId });
      const support = on.supports.find(({ jointId }) => jointId === adjuster.jointId);
      if (!support || joint === 0 || joint === on.driveline.joints.length - 1)
        return fail("correction.support-not-given", { joint: adjuster.jointId });
      const bare = on.driveline.sections.find(({ length }) => length === undefined);
      if (bare) return fail("correction.length-not-measured", { section: bare.id });
      return model(adjuster, [d], joint, support.mounted, null);
    }
    case "ride-height":
      return adjuster.pitchPerMetre === null && !on.axle?.guide
        ? fail("correction.axle-guide-not-measured")
        : model(adjuster, [d], -1, null, null);
    case "link-length":
      return adjuster.pitchPerMetre === null && on.axle?.guide?.kind !== "links"
        ? fail("correction.axle-guide-not-measured")
        : model(adjuster, [d], -1, null, null);
    case "rephase": {
      const section = on.driveline.sections.findIndex(({ id }) => id === adjuster.sectionId);
      if (section < 0) return fail("correction.unknown-section", { section: adjuster.sectionId });
      const { phasing } = on.driveline.sections[section] as (typeof on.driveline.sections)[number];
      return phasing === null
        ? fail("correction.phasing-not-measured", { section: adjuster.sectionId })
        : model(adjuster, [d], section, null, null);
    }
  }
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
