import { expect, it } from "vitest";
import { columnName } from "./column-name.js";
import { shakes } from "./shakes.js";

it.each([
  ["vel_z_mms", true],
  ["Velocity (in/s)", true],
  ["disp_x_um", true],
  ["Displacement [mm]", true],
  ["vel_z_mps", true],
  ["speed_kmh", false],
  ["speed_mps", false],
  ["Speed (m/s)", false],
  ["Speed [ms]", false],
  ["Velocity Z (m/s)", true],
  ["gps_speed_mph", false],
  ["height_m", false],
  ["accel_z_ms2", false],
])("%s is a vibration's motion: %s", (heading, is) => {
  expect(shakes(columnName(heading))).toBe(is);
});
