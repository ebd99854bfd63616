import { spawnSync } from "node:child_process";
import type { Attribution, AttributionInput } from "@halfturn/engine/attribution";
import type { OrderMap } from "@halfturn/engine/signal";
import { AXES, RATE } from "./long-drive.js";

/** What both found: they must agree, or the times compare different work. */
export interface Heard {
  readonly maps: readonly OrderMap[];
  readonly attribution: Attribution;
}

interface PeerAnswer {
  readonly seconds: number;
  /** Mean square of the shaft's first order over the map, per axis. */
  readonly firstOrder: readonly number[];
  /** By order, then by axis. */
  readonly amplitudes: readonly (readonly number[])[];
  readonly uncertainties: readonly (readonly number[])[];
}

/** Shares: of an amplitude or mean square; of a standard uncertainty, which rests on how each reads the noise. */
const AGREE = 0.01;
const AGREE_UNCERTAINTY = 0.25;
/** Orders that stand so many times their uncertainty above nothing are compared. */
const CLEAR = 20;

/** Seconds that SciPy takes for the same drive; null where there is none. Throws where it finds something else. */
export function scipySeconds(
  peer: string,
  directory: string,
  input: AttributionInput,
  turns: number,
  highest: number,
  heard: Heard,
): number | null {
  const { parts, reference } = input;
  const { attribution } = heard;
  const orders = parts.flatMap((part) => part.orders.map(({ order }) => (order * part.perWheelTurn) / reference.perWheelTurn));
  const blockTurns = reference.angle.total / (2 * Math.PI) / attribution.blocks.length;
  const factor = Math.round(RATE / (2 * attribution.band));
  const settings = [directory, RATE, AXES, turns, highest, orders.join(","), blockTurns, factor].map(String);
  const { status, stdout } = spawnSync("python3", [peer, ...settings], { encoding: "utf8" });
  if (status !== 0) return null;
  const answer = JSON.parse(stdout) as PeerAnswer;
  mustAgree(answer, heard, parts, turns);
  return answer.seconds;
}

function mustAgree(
  { firstOrder, amplitudes, uncertainties }: PeerAnswer,
  { maps, attribution }: Heard,
  parts: AttributionInput["parts"],
  turns: number,
): void {
  const differ = (ours: number, theirs: number, share: number): boolean => Math.abs(ours - theirs) > share * theirs;
  for (const [axis, { meanSquare, lines, times }] of maps.entries()) {
    let mean = 0;
    for (let row = 0; row < times.length; row++) mean += (meanSquare[row * lines + turns] as number) / times.length;
    if (differ(mean, firstOrder[axis] as number, AGREE)) throw new Error(`map of axis ${axis}: ${mean} and ${firstOrder[axis]}`);
  }
  const names = parts.flatMap(({ part, orders }) => orders.map(({ order }) => ({ part, order })));
  const compared = attribution.contributions.filter(({ amplitudes: ours }) =>
    ours.every((one) => one !== null && one.value > CLEAR * one.u),
  );
  if (compared.length < 2) throw new Error("what was timed is not the work");
  for (const { part, order, amplitudes: ours } of compared) {
    const k = names.findIndex((name) => name.part === part && name.order === order);
    for (const [axis, found] of ours.entries()) {
      const [value, u] = [amplitudes[k]?.[axis] as number, uncertainties[k]?.[axis] as number];
      if (!found || differ(found.value, value, AGREE) || differ(found.u, u, AGREE_UNCERTAINTY))
        throw new Error(`${part} ${order}, axis ${axis}: ${found?.value} ± ${found?.u} and ${value} ± ${u}`);
    }
  }
}
