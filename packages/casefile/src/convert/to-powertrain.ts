import {
  circumferenceAsGiven,
  circumferenceOfSize,
  type Powertrain,
  type RollingCircumference,
  readTyreSize,
} from "@halfturn/engine/orders";
import type { MetresPerSecond } from "@halfturn/engine/units";
import { type Problem, suggestionFor } from "../problems/index.js";
import type { Case, CaseVehicle } from "../schema/case.js";

export interface PowertrainSettings {
  /** Label of the gear driven; the complaint's when left out. */
  readonly gear?: string | undefined;
  /** Road speed, m/s: a circumference known from the size alone grows with it. */
  readonly speed: MetresPerSecond;
}

/** Something taken for granted or left out on the way; the shape of a finding. */
export type PowertrainNote =
  | { readonly code: "gear-taken"; readonly path: string; readonly params: { readonly gear: string; readonly why: "only" | "direct" } }
  | { readonly code: "gear-unknown"; readonly path: string; readonly params: { readonly gears: readonly string[] } }
  | { readonly code: "transfer-ratio-taken"; readonly path: string; readonly params: Readonly<Record<never, never>> };

export type PowertrainResult =
  | {
      readonly ok: true;
      readonly powertrain: Powertrain;
      /** Label of the gear that the engine's ratio is for; null where it is not known. */
      readonly gear: string | null;
      readonly notes: readonly PowertrainNote[];
    }
  | { readonly ok: false; readonly problems: readonly Problem[] };

/** Tyres of road vehicles, metres; a size that says anything else was not read as it was meant. */
const LEAST_DIAMETER = 0.3;
const MOST_DIAMETER = 3;

/**
 * The ratios of a case from the wheel up to the engine. A circumference that is given goes before the tyre's size.
 * Without a gear the engine and what it drives are left out, and a note says so; without axle ratio or tyre there is nothing to answer.
 */
export function toPowertrain(document: Case, { gear, speed }: PowertrainSettings): PowertrainResult {
  const vehicle = document.vehicle ?? {};
  const circumference = circumferenceOf(vehicle, speed);
  const chosen = chooseGear(document, gear);
  const { axleRatio } = vehicle;
  const problems = [
    ...(axleRatio === undefined ? [missing("axleRatio")] : []),
    ...("code" in circumference ? [circumference] : []),
    ...("code" in chosen ? [chosen] : []),
  ];
  if (axleRatio === undefined || "code" in circumference || "code" in chosen) return { ok: false, problems };
  const transferGiven = vehicle.transferRatio !== undefined;
  // Drivelines to two axles part in a transfer case, whose ratio then matters to the engine.
  const unsaidTransfer: readonly PowertrainNote[] =
    transferGiven || chosen.gear === null || document.drivelines.length < 2
      ? []
      : [{ code: "transfer-ratio-taken", path: "vehicle.transferRatio", params: {} }];
  return {
    ok: true,
    powertrain: {
      circumference,
      axleRatio,
      transferRatio: vehicle.transferRatio ?? 1,
      gearRatio: chosen.ratio,
      cylinders: vehicle.cylinders ?? null,
      slip: vehicle.slipShare ?? 0,
      accessories: (vehicle.accessories ?? []).map(({ id, ratio }) => ({ id, ratio })),
    },
    gear: chosen.gear,
    notes: [...chosen.notes, ...unsaidTransfer],
  };
}

const missing = (key: "axleRatio" | "tyre"): Problem => ({ code: "missing", path: `vehicle.${key}`, params: { key } });

function circumferenceOf({ tyre }: CaseVehicle, speed: MetresPerSecond): RollingCircumference | Problem {
  if (tyre === undefined) return missing("tyre");
  if ("rollingCircumferenceMm" in tyre) return circumferenceAsGiven(tyre.rollingCircumferenceMm / 1000);
  const { size } = tyre;
  const unreadable = (why: "unreadable" | "not-in-table"): Problem => ({
    code: "unreadable-tyre",
    path: "vehicle.tyre.size",
    params: { got: size, why },
  });
  const read = readTyreSize(size);
  if (!read.ok) return unreadable(read.code === "tyre.not-in-table" ? "not-in-table" : "unreadable");
  const { overallDiameter } = read.tyre;
  return overallDiameter < LEAST_DIAMETER || overallDiameter > MOST_DIAMETER
    ? unreadable("unreadable")
    : circumferenceOfSize(read.tyre, speed);
}

interface ChosenGear {
  readonly gear: string | null;
  readonly ratio: number | null;
  readonly notes: readonly PowertrainNote[];
}

/** The gear asked for, else the complaint's, else the only one, else the one that is direct; else none. */
function chooseGear({ vehicle, complaint }: Case, asked: string | undefined): ChosenGear | Problem {
  const gears = vehicle?.gears ?? [];
  const labels = gears.map(({ label }) => label);
  const named = gears.find(({ label }) => label === (asked ?? complaint?.gear));
  if (named) return { gear: named.label, ratio: named.ratio, notes: [] };
  if (asked !== undefined) {
    const params = { of: "gear", got: asked, allowed: labels, ...suggestionFor(asked, labels) } as const;
    return { code: "unknown-reference", path: "vehicle.gears", params };
  }
  const [only, ...others] = gears;
  if (only && others.length === 0) return taken(only, "only");
  const [direct, ...alike] = gears.filter(({ ratio }) => ratio === 1);
  if (direct && alike.length === 0) return taken(direct, "direct");
  return { gear: null, ratio: null, notes: [{ code: "gear-unknown", path: "vehicle.gears", params: { gears: labels } }] };
}

const taken = ({ label, ratio }: { readonly label: string; readonly ratio: number }, why: "only" | "direct"): ChosenGear => ({
  gear: label,
  ratio,
  notes: [{ code: "gear-taken", path: "complaint.gear", params: { gear: label, why } }],
});
