import type { AxleGuide } from "../model/index.js";
import type { GuidePlace } from "./guide-place.js";

/** A leaf-spring half guides like a link of three quarters of its length (three-link equivalent; from memory, SAE spring design manual HS-788). */
const LINK_SHARE = 0.75;

/**
 * Side view of an axle on a pair of leaf springs, the body raised by `rise` metres (negative: lowered). Writes into `out`.
 * The seat turns because unequal halves bend unequally: with F a = F' b at the seat and stiffness as 1/length^3 the turn is rise (1/b - 1/a), a the forward and
 * b the rearward half (derived; halves of one stack of leaves). The centre follows the arc of the fixed half's equivalent link.
 */
export function leafMove(guide: Extract<AxleGuide, { kind: "leaf" }>, rise: number, out: GuidePlace): void {
  const { fixedEyeForward: x, fixedEyeUp: z, shackleEyeForward } = guide;
  const ahead = Math.max(x, shackleEyeForward ?? -x);
  const behind = -Math.min(x, shackleEyeForward ?? -x);
  out.reached = ahead > 0 && behind > 0;
  if (!out.reached) return;
  out.turn = rise * (1 / behind - 1 / ahead);
  const c = Math.cos(out.turn);
  const s = Math.sin(out.turn);
  const nearX = (1 - LINK_SHARE) * x;
  const nearZ = (1 - LINK_SHARE) * z;
  const height = -rise - nearX * s + nearZ * c - z;
  const squared = LINK_SHARE ** 2 * (x * x + z * z) - height * height;
  out.reached = squared > 0;
  out.forward = out.reached ? x - Math.sign(x) * Math.sqrt(squared) - (nearX * c + nearZ * s) : 0;
}
