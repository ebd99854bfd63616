import { angleBetween, vec3 } from "../../geometry/index.js";
import type { Metres, Radians } from "../../units/index.js";
import { type CorrectionModel, correctionModel } from "../geometry/correction-model.js";
import { bestRecords } from "../geometry/draw-records.js";
import { newPlacement, PLACED, placeShafts } from "../geometry/place-shafts.js";
import { newMoves, writeMoves } from "../geometry/write-moves.js";
import type { Axle, CorrectionDriveline, CorrectionInput } from "../model/index.js";

/** A length or angle that nobody measured. */
export interface MissingMeasurement {
  /** In ids: `length:SECTION`, `centre-to-joint`, `bearing:JOINT`, `spring-position`, `pad-length:ADJUSTER`, `slip:SECTION`, `first-joint`, `axle-guide`. */
  readonly of: string;
  readonly path: string;
  /**
   * How far a joint angle may be off for want of it, radians: half of the range over which one moves between the ends of what is usual, or, where more, what
   * doing without the measurement takes from its middle.
   */
  readonly effect: number | null;
}

/** An axle of which nothing is known. */
const UNDESCRIBED: Axle = {
  centreToJoint: null,
  jointAboveCentre: 0 as Metres,
  springPosition: null,
  padInclination: 0 as Radians,
  steered: false,
  caster: null,
  windUp: null,
  guide: null,
};

interface Gap {
  readonly of: string;
  readonly path: string;
  /** The input with this gap filled by the low, middle or high end of what is usual; null where no value could be tried. */
  readonly filled: ((input: CorrectionInput, end: "low" | "middle" | "high") => CorrectionInput) | null;
}

/** What is usual, metres. Common practice, no source: wide enough for light and heavy vehicles. */
const USUAL = {
  length: { low: 0.5, middle: 1.1, high: 1.8 },
  arm: { low: 0.2, middle: 0.3, high: 0.45 },
  bearing: { low: 0.03, middle: 0.1, high: 0.25 },
  firstJoint: { low: -0.4, middle: 0, high: 0.4 },
  pad: { low: 0.06, middle: 0.1, high: 0.16 },
} as const;

/** What is missing for these amounts, largest effect first; gaps that change nothing here are left out. */
export function missingMeasurements(model: CorrectionModel, amounts: ArrayLike<number>): readonly MissingMeasurement[] {
  const gaps = gapsOf(model);
  const filledBut = (left: Gap | null): CorrectionInput =>
    gaps.reduce((input, gap) => (gap === left ? input : (gap.filled?.(input, "middle") ?? input)), model.input);
  const middle = filledBut(null);
  const central = jointAngles(correctionModel(middle), amounts);
  return gaps
    .map((gap): MissingMeasurement => {
      const { of, path, filled } = gap;
      if (!filled) return { of, path, effect: null };
      const without = jointAngles(correctionModel(filledBut(gap)), amounts);
      const low = jointAngles(correctionModel(filled(middle, "low")), amounts);
      const high = jointAngles(correctionModel(filled(middle, "high")), amounts);
      const spread = low.map((angle, k) => Math.abs(angle - (high[k] as number)) / 2);
      const loss = without.map((angle, k) => Math.abs(angle - (central[k] as number)));
      return { of, path, effect: Math.max(0, ...spread, ...loss) };
    })
    .filter(({ effect }) => effect === null || effect > 0)
    .sort((a, b) => (b.effect ?? 0) - (a.effect ?? 0));
}

function gapsOf({ input, adjusters }: CorrectionModel): readonly Gap[] {
  const onDrivelines = input.drivelines.flatMap((on, d): readonly Gap[] => {
    const { driveline, path, axle, supports, slips } = on;
    const edit = (change: (on: CorrectionDriveline) => CorrectionDriveline) => (all: CorrectionInput) => ({
      ...all,
      drivelines: all.drivelines.map((each, k) => (k === d ? change(each) : each)),
    });
    const editAxle = (all: CorrectionInput, change: Partial<Axle>): CorrectionInput =>
      edit((each) => ({ ...each, axle: { ...(each.axle ?? UNDESCRIBED), ...change } }))(all);
    const lengths = driveline.sections.flatMap(({ id, length }, s): readonly Gap[] =>
      length !== undefined
        ? []
        : [
            {
              of: `length:${id}`,
              path: `${path}.sections[${s}]`,
              filled: (all, end) =>
                edit((each) => ({
                  ...each,
                  driveline: {
                    ...each.driveline,
                    sections: each.driveline.sections.map((section, k) =>
                      k === s ? { ...section, length: USUAL.length[end] as Metres } : section,
                    ),
                  },
                }))(all),
            },
          ],
    );
    const arm: readonly Gap[] =
      (axle?.centreToJoint ?? null) === null && driveline.sections.length > 0
        ? [
            {
              of: "centre-to-joint",
              path: `${path}.axle`,
              filled: (all, end) => editAxle(all, { centreToJoint: USUAL.arm[end] as Metres }),
            },
          ]
        : [];
    const wedged = adjusters.some(({ adjuster, drivelines }) => adjuster.kind === "axle-wedge" && drivelines.includes(d));
    const spring: readonly Gap[] =
      (axle?.springPosition ?? null) === null && wedged
        ? [
            {
              of: "spring-position",
              path: `${path}.axle`,
              filled: (all, end) => editAxle(all, { springPosition: end === "low" ? "below-axle" : "above-axle" }),
            },
          ]
        : [];
    const bearings = supports.flatMap(({ jointId, bearingToJoint }): readonly Gap[] =>
      bearingToJoint !== null
        ? []
        : [
            {
              of: `bearing:${jointId}`,
              path,
              filled: (all, end) =>
                edit((each) => ({
                  ...each,
                  supports: each.supports.map((support) =>
                    support.jointId === jointId ? { ...support, bearingToJoint: USUAL.bearing[end] as Metres } : support,
                  ),
                }))(all),
            },
          ],
    );
    const joint: readonly Gap[] =
      on.firstJoint !== null || !adjusters.some(({ adjuster }) => adjuster.kind === "mount-spacer")
        ? []
        : [
            {
              of: "first-joint",
              path,
              filled: (all, end) =>
                edit((each) => ({ ...each, firstJoint: { forward: USUAL.firstJoint[end] as Metres, left: 0 as Metres, up: 0 as Metres } }))(
                  all,
                ),
            },
          ];
    const slipGaps = slips.flatMap(({ sectionId, engaged, minimumEngaged, inwardTravel }): readonly Gap[] =>
      engaged === null || minimumEngaged === null || inwardTravel === null ? [{ of: `slip:${sectionId}`, path, filled: null }] : [],
    );
    const noSlip: readonly Gap[] = slips.length === 0 && driveline.sections.length > 0 ? [{ of: "slip", path, filled: null }] : [];
    return [...lengths, ...arm, ...spring, ...bearings, ...joint, ...slipGaps, ...noSlip];
  });
  const pads = input.adjusters.flatMap((adjuster): readonly Gap[] =>
    adjuster.kind === "axle-wedge" && adjuster.padLength === null
      ? [
          {
            of: `pad-length:${adjuster.id}`,
            path: adjuster.path,
            filled: (all, end) => ({
              ...all,
              adjusters: all.adjusters.map((each) => (each.id === adjuster.id ? { ...each, padLength: USUAL.pad[end] as Metres } : each)),
            }),
          },
        ]
      : [],
  );
  return [...onDrivelines, ...pads];
}

/** Best estimates of all joint angles, states in turn, radians; nought where the geometry cannot stand. */
function jointAngles(model: CorrectionModel, amounts: ArrayLike<number>): readonly number[] {
  const moves = newMoves(model);
  writeMoves(model, amounts, moves);
  const records = bestRecords(model);
  return model.drivelines.flatMap(({ topology }, d) =>
    model.states.flatMap((_, s) => {
      const placement = newPlacement(topology.joints);
      const placed = placeShafts(topology, records[d] as Float64Array, 0, moves[d]?.[s] as Float64Array, s, placement) === PLACED;
      const at = (k: number) => vec3(...(Array.from(placement.directions.subarray(3 * k, 3 * k + 3)) as [number, number, number]));
      return Array.from({ length: topology.joints }, (_unused, k) => (placed ? angleBetween(at(k), at(k + 1)) : 0));
    }),
  );
}
