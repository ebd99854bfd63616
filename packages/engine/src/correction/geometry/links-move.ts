import type { AxleGuide } from "../model/index.js";
import type { GuidePlace } from "./guide-place.js";

/** Newton's steps; a reachable place is found to rounding within six or so. */
const ROUNDS = 40;
/** Link lengths met to this, metres: far below what a tape can tell, far above rounding. */
const MET = 1e-13;
/** Past a quarter of a right angle the links have been turned inside out. */
const LARGEST_TURN = 0.4;

/**
 * Side view of an axle on two links: the turn and the forward shift at which both links keep their (changed) lengths while the centre moves by `up`, metres.
 * Writes into `out`; `reached` is false where no such place is near. turn: right-hand about vehicle left, so a forward end goes down.
 */
export function linksMove(
  guide: Extract<AxleGuide, { kind: "links" }>,
  up: number,
  lowerLonger: number,
  upperLonger: number,
  out: GuidePlace,
): void {
  const { lower, upper } = guide;
  const lowerLength = Math.hypot(lower.axleForward - lower.frameForward, lower.axleUp - lower.frameUp) + lowerLonger;
  const upperLength = Math.hypot(upper.axleForward - upper.frameForward, upper.axleUp - upper.frameUp) + upperLonger;
  let turn = 0;
  let forward = 0;
  out.reached = false;
  if (!(lowerLength > 0) || !(upperLength > 0)) return;
  for (let round = 0; round < ROUNDS; round++) {
    const c = Math.cos(turn);
    const s = Math.sin(turn);
    const lx = forward + lower.axleForward * c + lower.axleUp * s - lower.frameForward;
    const lz = up - lower.axleForward * s + lower.axleUp * c - lower.frameUp;
    const ux = forward + upper.axleForward * c + upper.axleUp * s - upper.frameForward;
    const uz = up - upper.axleForward * s + upper.axleUp * c - upper.frameUp;
    const lowerMiss = (lx * lx + lz * lz - lowerLength * lowerLength) / 2;
    const upperMiss = (ux * ux + uz * uz - upperLength * upperLength) / 2;
    if (Math.abs(lowerMiss) < MET * lowerLength && Math.abs(upperMiss) < MET * upperLength) {
      out.reached = Math.abs(turn) < LARGEST_TURN;
      out.turn = turn;
      out.forward = forward;
      return;
    }
    // Derivatives by the turn: the point (x, z) about the centre moves by (z, -x).
    const lowerByTurn = lx * (lower.axleUp * c - lower.axleForward * s) - lz * (lower.axleForward * c + lower.axleUp * s);
    const upperByTurn = ux * (upper.axleUp * c - upper.axleForward * s) - uz * (upper.axleForward * c + upper.axleUp * s);
    const determinant = lx * upperByTurn - ux * lowerByTurn;
    if (determinant === 0) return;
    forward -= (lowerMiss * upperByTurn - upperMiss * lowerByTurn) / determinant;
    turn -= (lx * upperMiss - ux * lowerMiss) / determinant;
    if (!Number.isFinite(turn) || !Number.isFinite(forward)) return;
  }
}
