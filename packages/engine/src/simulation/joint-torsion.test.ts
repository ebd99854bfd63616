import { expect, test } from "vitest";
import { chainState, transmissionErrorAt, unevennessOf, wholeChain } from "../kinematics/index.js";
import { torsionalAcceleration } from "./joint-torsion.js";

/** A second difference over h: truncation h^2/12 of the fourth derivative, rounding 4 eps / h^2. */
const STEP = 1e-3;
const SECOND_DIFFERENCE = 2e-5;

test("is the second derivative of the transmission error of a real chain", () => {
  const pose = (inclination: number) => ({ inclination, heading: 0 }) as Parameters<typeof chainState>[1][number];
  const joint = (id: string) => ({ id, kind: "cross" }) as const;
  const section = { id: "shaft", phasing: 0, phasingMeasured: true } as unknown as Parameters<typeof chainState>[0]["sections"][number];
  const map = wholeChain(
    chainState({ id: "rear", joints: [joint("J1"), joint("J2")], sections: [section] }, [pose(0), pose(0.2), pose(0.05)]),
  );
  const phase = (Math.atan2(map.qIm, map.qRe) - Math.atan2(map.pIm, map.pRe)) / 2;
  const k = unevennessOf(map);
  expect(k).toBeGreaterThan(1e-3);
  for (let t = 0; t < 6; t += 0.37) {
    const error = (at: number): number => transmissionErrorAt(map, at);
    const numeric = (error(t + STEP) - 2 * error(t) + error(t - STEP)) / STEP ** 2;
    expect(Math.abs(torsionalAcceleration(k, t, phase) - numeric)).toBeLessThan(SECOND_DIFFERENCE);
  }
});
