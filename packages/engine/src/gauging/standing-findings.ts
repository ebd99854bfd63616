import type { Finding } from "../findings/index.js";
import type { Gauging } from "./gauging.js";

/** Findings on whether the vehicle stood as it drives while it was gauged, so that they can be told before the first reading; `path` is that of the gauging. */
export function standingFindings({ rideHeight, wheels, path }: Pick<Gauging, "rideHeight" | "wheels" | "path">): readonly Finding[] {
  const findings: Finding[] = [];
  const state = `${path}.state`;
  if (rideHeight === "drooped" || rideHeight === "compressed") {
    findings.push({ code: "gauging.not-at-ride-height", severity: "stop", path: `${state}.rideHeight`, params: { rideHeight } });
  }
  if (rideHeight === "laden") findings.push({ code: "gauging.laden", severity: "note", path: `${state}.rideHeight`, params: {} });
  if (wheels === "hanging") findings.push({ code: "gauging.wheels-hanging", severity: "stop", path: `${state}.wheels`, params: {} });
  return findings;
}
