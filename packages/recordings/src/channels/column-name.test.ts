import { describe, expect, it } from "vitest";
import { scaledChannels } from "./channel-scale.js";
import { columnName } from "./column-name.js";

const G = 9.806_65;

describe("columnName", () => {
  it.each([
    ["time_s", "time", "s", "time", 1],
    ["time_ms", "time", "ms", "time", 1e-3],
    ["Time (s)", "Time", "s", "time", 1],
    ["timestamp", "timestamp", null, "time", 1],
    ["gps_time_s", "gps_time", "s", "time", 1],
    ["accel_z_ms2", "accel_z", "ms2", "acceleration", 1],
    ["accel_z_m_s2", "accel_z", "m_s2", "acceleration", 1],
    ["Accel Z [m/s²]", "Accel Z", "m/s²", "acceleration", 1],
    ["az (g)", "az", "g", "acceleration", G],
    ["vib_mms2", "vib", "mms2", "acceleration", 1e-3],
    ["floor_mg", "floor", "mg", "acceleration", G / 1000],
    ["speed_kmh", "speed", "kmh", "velocity", 1000 / 3600],
    ["speed_ms", "speed", "ms", "velocity", 1],
    ["speed_mph", "speed", "mph", "velocity", 0.447_04],
    ["engine_rpm", "engine", "rpm", "rotation", Math.PI / 30],
    ["tacho_propeller_shaft", "tacho_propeller_shaft", null, "pulses", 1],
    ["channel_1_fs", "channel_1", "fs", "share", 1],
    ["Seat [FS]", "Seat", "FS", "share", 1],
    ["accel_mv", "accel", "mv", "voltage", 1e-3],
    ["note", "note", null, "unknown", 1],
    ["wheel_s", "wheel_s", null, "unknown", 1],
  ])("takes %j apart", (id, name, unit, quantity, factor) => {
    const column = columnName(id);
    expect({ ...column, factor: 0 }).toEqual({ id, name, unit, quantity, factor: 0 });
    // One rounding of a double.
    expect(Math.abs(column.factor / factor - 1)).toBeLessThanOrEqual(Number.EPSILON);
  });
});

describe("scaledChannels", () => {
  const column = columnName("channel_1");

  it("multiplies by full scale, divides by sensitivity and converts the unit", () => {
    const scaled = scaledChannels([column], [{ id: "channel_1", name: "seat_rail", unit: "g", fullScale: 10, sensitivity: 0.1 }]);
    expect(scaled).toMatchObject({ ok: true, value: [{ channel: { id: "channel_1", name: "seat_rail", quantity: "acceleration" } }] });
    expect(scaled.ok && scaled.value[0]?.factor).toBe(100 * G);
  });

  it("takes a unit or a tachometer from the new name", () => {
    expect(scaledChannels([column], [{ id: "channel_1", name: "tacho_wheel" }])).toMatchObject({
      value: [{ channel: { quantity: "pulses", name: "tacho_wheel" } }],
    });
    expect(scaledChannels([column], [{ id: "channel_1", name: "rail_g", fullScale: 4 }])).toMatchObject({
      value: [{ channel: { quantity: "acceleration" }, factor: 4 * G }],
    });
  });

  it("refuses what it does not know", () => {
    expect(scaledChannels([column], [{ id: "chanel_1" }])).toMatchObject({ ok: false, code: "recording.channel-unknown" });
    expect(scaledChannels([column], [{ id: "channel_1", unit: "furlong" }])).toMatchObject({ ok: false, code: "recording.unit-unknown" });
    expect(scaledChannels([column], [{ id: "channel_1", fullScale: 0 }])).toMatchObject({
      ok: false,
      code: "recording.header-contradicts",
    });
  });
});
