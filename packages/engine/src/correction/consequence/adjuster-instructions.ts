import { type Radians, radiansToDegrees } from "../../units/index.js";
import { type Adjuster, type CorrectionDriveline, type CorrectionInput, toMillimetres } from "../model/index.js";
import { type Instruction, instruction } from "./instruction.js";
import { wedgeInstructions } from "./wedge-instructions.js";

/** What to do for one change, with what goes with it. */
export function adjusterInstructions(input: CorrectionInput, adjuster: Adjuster, amount: number): readonly Instruction[] {
  const id = adjuster.id;
  if (adjuster.kind === "mount-spacer") return mountInstructions(id, adjuster.fitted, amount);
  const on = input.drivelines.find(({ driveline }) => driveline.id === adjuster.drivelineId);
  if (!on) return [];
  const driveline = on.driveline.id;
  const changeMm = toMillimetres(amount);
  switch (adjuster.kind) {
    case "axle-wedge":
      return wedgeInstructions(on, adjuster, amount);
    case "support-drop":
      return dropInstructions(adjuster, amount);
    case "support-shift":
      return [
        instruction(
          "move-support",
          { adjuster: id, driveline, joint: adjuster.jointId, byMm: Math.abs(changeMm), toward: amount > 0 ? "left" : "right" },
          "before-disconnecting",
        ),
        instruction("check-exhaust-clearance", { driveline }, "hot-exhaust"),
      ];
    case "ride-height":
      return [
        instruction("change-ride-height", { adjuster: id, driveline, changeMm }, "supported-vehicle", "brake-and-steering-lines"),
        instruction("check-brake-hose", { driveline }),
        instruction("check-headlamps"),
      ];
    case "link-length":
      return [
        instruction(
          "set-link-length",
          { adjuster: id, driveline, link: adjuster.link, changeMm },
          "supported-vehicle",
          "brake-and-steering-lines",
        ),
        instruction("same-on-both-sides", { adjuster: id }),
        instruction("check-brake-hose", { driveline }),
      ];
    case "rephase":
      return rephaseInstructions(on, adjuster, amount);
  }
}

function mountInstructions(id: string, fitted: number, amount: number): readonly Instruction[] {
  const totalMm = toMillimetres(fitted + amount);
  const params = { adjuster: id, changeMm: toMillimetres(amount), totalMm };
  return [
    instruction(totalMm > 1e-6 ? "fit-mount-spacer" : "remove-mount-spacer", params, "supported-vehicle"),
    ...(amount > 0 ? [instruction("bolts-longer", { adjuster: id, byMm: toMillimetres(amount) })] : []),
    instruction("check-powertrain-clearance"),
    instruction("check-exhaust-clearance", {}, "hot-exhaust"),
  ];
}

function dropInstructions(
  { id, drivelineId, jointId, fitted }: Extract<Adjuster, { kind: "support-drop" }>,
  amount: number,
): readonly Instruction[] {
  const totalMm = toMillimetres(fitted + amount);
  const params = { adjuster: id, driveline: drivelineId, joint: jointId, changeMm: toMillimetres(amount), totalMm };
  const more = Math.abs(fitted + amount) > Math.abs(fitted);
  return [
    instruction(Math.abs(totalMm) > 1e-6 ? "fit-support-spacer" : "remove-support-spacer", params, "before-disconnecting"),
    ...(more ? [instruction("bolts-longer", { adjuster: id, byMm: Math.abs(params.changeMm) })] : []),
    instruction("check-exhaust-clearance", { driveline: drivelineId }, "hot-exhaust"),
  ];
}

function rephaseInstructions(
  on: CorrectionDriveline,
  adjuster: Extract<Adjuster, { kind: "rephase" }>,
  amount: number,
): readonly Instruction[] {
  const phasing = on.driveline.sections.find(({ id }) => id === adjuster.sectionId)?.phasing ?? 0;
  const turn = (amount * 2 * Math.PI) / adjuster.splineTeeth;
  const params = {
    adjuster: adjuster.id,
    driveline: on.driveline.id,
    section: adjuster.sectionId,
    steps: Math.abs(amount),
    turnDeg: radiansToDegrees(Math.abs(turn) as Radians),
    /** Seen from the source end. */
    direction: amount > 0 ? "clockwise" : "anticlockwise",
    beforeDeg: radiansToDegrees(phasing as Radians),
    afterDeg: halfTurnDegrees(radiansToDegrees((phasing + turn) as Radians)),
  };
  return [
    instruction("match-mark", { driveline: on.driveline.id, section: adjuster.sectionId }, "mark-before-apart"),
    instruction("rephase-section", params, "before-disconnecting"),
    instruction("check-balance", { driveline: on.driveline.id, section: adjuster.sectionId }),
  ];
}

/** A phasing brought into (-90, 90]. */
const halfTurnDegrees = (degrees: number): number => degrees - 180 * Math.ceil((degrees - 90) / 180);
