import type { FindingParams } from "../../findings/index.js";

/** Every instruction a plan can give. Words for each stand in the catalogue of every language; lengths in the params are in millimetres, angles in degrees. */
export const INSTRUCTION_CODES = [
  // What to do.
  "do-nothing",
  "fit-wedge",
  "remove-wedge",
  "fit-support-spacer",
  "remove-support-spacer",
  "move-support",
  "fit-mount-spacer",
  "remove-mount-spacer",
  "change-ride-height",
  "rephase-section",
  "set-link-length",
  // What goes with it.
  "same-on-both-sides",
  "centre-bolt-longer",
  "u-bolts-longer",
  "bolts-longer",
  "caster-changes",
  "match-mark",
  "check-balance",
  "tighten-to-maker",
  "replace-single-use-fasteners",
  // What else to check.
  "check-slip",
  "measure-slip-before-fitting",
  "check-brake-hose",
  "check-exhaust-clearance",
  "check-powertrain-clearance",
  "check-headlamps",
  "trade-off",
  "gauge-again",
] as const;

export type InstructionCode = (typeof INSTRUCTION_CODES)[number];

/** Cautions that can stand beside an instruction; ids of the catalogue's cautions. */
export type CautionCode =
  | "before-disconnecting"
  | "mark-before-apart"
  | "brake-and-steering-lines"
  | "shaft-off-may-roll"
  | "supported-vehicle"
  | "hot-exhaust"
  | "prove-from-slow"
  | "too-little-to-conclude";

export interface Instruction {
  readonly code: InstructionCode;
  readonly params: FindingParams;
  readonly cautions: readonly CautionCode[];
}

/** One instruction with its params (millimetres and degrees, as the keys say) and the cautions that belong to it. */
export const instruction = (code: InstructionCode, params: FindingParams = {}, ...cautions: readonly CautionCode[]): Instruction => ({
  code,
  params,
  cautions,
});
