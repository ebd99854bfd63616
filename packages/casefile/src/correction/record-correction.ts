import type { SectionAcceleration, SpeedResult } from "@halfturn/engine/analysis";
import type {
  CorrectionInput,
  Instruction,
  PlannedChange,
  PredictedDriveline,
  PredictedState,
  RankedChoice,
} from "@halfturn/engine/correction";
import { slipTravelMm } from "../contract/prediction-to-json.js";
import { angleQuantity, quantity } from "../contract/quantity.js";
import type { ChosenGauging } from "../convert/latest-gaugings.js";
import type { Case, CaseCorrection } from "../schema/case.js";
import { writtenChange } from "./amounts.js";

/** What is put on record of a plan: the input it was worked out from, which gaugings spoke, and what the engine foretold. Changes that no plan ranked have no chance. */
export interface ChosenPlan extends Partial<Pick<RankedChoice, "probabilityWithin" | "probabilityOfLimits">> {
  readonly input: CorrectionInput;
  readonly basis: readonly ChosenGauging[];
  readonly changes: readonly Pick<PlannedChange, "adjusterId" | "amount">[];
  readonly states: readonly PredictedState[];
  readonly instructions: readonly Instruction[];
}

/**
 * The case with the plan written into its corrections, all else as it was. A plan chosen from the same gaugings before takes the place of the earlier one with
 * the same other keys: nobody can have made both. `date`: ISO 8601, handed in.
 */
export function recordCorrection(document: Case, plan: ChosenPlan, date: string): Case {
  const entry = toEntry(document, plan, date);
  const before = document.corrections ?? [];
  const last = before.at(-1);
  const again = last?.state === "chosen" && JSON.stringify(last.basis) === JSON.stringify(entry.basis);
  const corrections = again ? [...before.slice(0, -1), { ...last, ...entry }] : [...before, entry];
  return { ...document, updatedAt: date, corrections };
}

const toEntry = (document: Case, plan: ChosenPlan, date: string): CaseCorrection => ({
  state: "chosen",
  chosenAt: date,
  basis: plan.basis.flatMap(({ driveline, gauging }) => {
    const id = document.drivelines[driveline]?.id;
    return gauging === null || id === undefined ? [] : [{ driveline: id, gauging }];
  }),
  changes: plan.changes.map((change) => writtenChange(plan.input, change)),
  ...(plan.probabilityWithin === undefined ? {} : { probabilityWithin: plan.probabilityWithin }),
  ...(plan.probabilityOfLimits === undefined ? {} : { probabilityOfLimits: plan.probabilityOfLimits }),
  predicted: plan.states.map(({ id, drivelines }) => ({ state: id, drivelines: drivelines.map(toPredicted) })),
  instructions: plan.instructions.map(({ code, params, cautions }) => ({ code, params: { ...params }, cautions: [...cautions] })),
});

const toPredicted = (driveline: PredictedDriveline) => ({
  driveline: driveline.drivelineId,
  shafts: driveline.shafts.map(({ id, inclination, heading }) => ({
    id,
    inclinationDeg: forFile(angleQuantity(inclination)),
    headingDeg: forFile(angleQuantity(heading)),
  })),
  joints: driveline.joints.map(({ id, operatingAngle }) => ({ id, operatingAngleDeg: forFile(angleQuantity(operatingAngle)) })),
  equivalentAngleDeg: forFile(angleQuantity(driveline.cancellation.equivalentAngle)),
  slipTravelMm: forFile(slipTravelMm(driveline)),
  ...atHighestSpeed(driveline.motion.speeds.at(-1)),
});

/** The speeds rise; the last one is the highest in use. */
const atHighestSpeed = (speed: SpeedResult | undefined) =>
  speed && {
    highestSpeed: {
      shaftRpm: rounded(speed.shaftSpeed),
      drivenAccelerationRadS2: forFile(quantity(speed.drivenAcceleration)),
      drive: speed.drive.map(ofSection),
      coast: speed.coast.map(ofSection),
    },
  };

const ofSection = ({ section, acceleration }: SectionAcceleration) => ({ section, accelerationRadS2: forFile(quantity(acceleration)) });

/** A millionth of a degree or millimetre is as much as anybody will ever compare. */
const DECIMALS = 6;
const rounded = (value: number): number => Number(value.toFixed(DECIMALS)) + 0;

const forFile = (quantity: ReturnType<typeof angleQuantity>) =>
  quantity && {
    value: rounded(quantity.value),
    u: rounded(quantity.u),
    interval95: [rounded(quantity.interval95[0]), rounded(quantity.interval95[1])] as [number, number],
  };
