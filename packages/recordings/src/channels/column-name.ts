import { type RecordingUnit, recordingUnit } from "./unit-table.js";

/** A column's heading taken apart. */
export interface ColumnName {
  readonly id: string;
  readonly name: string;
  readonly unit: string | null;
  readonly quantity: RecordingUnit["quantity"];
  /** SI value of one unit; 1 where none is named. */
  readonly factor: number;
}

/** "Accel Z (m/s^2)", "Accel Z [g]". */
const BRACKETED = /^(.*?)\s*[([]([^()[\]]+)[)\]]$/;
const TIME = /^(?:(?:.*[_ /-])?(?:time|timestamp|datetime|elapsed|zeit|uhrzeit|zeitstempel|tiempo|hora)|(?:.*[_ ])?t)$/i;
/** `seconds_elapsed`: the unit comes first. */
const ELAPSED = /^(.+)[_ ]elapsed$/i;
const TACHO = /^tacho(?:meter)?(?:_|$)/i;
const PER_SECOND: RecordingUnit = { quantity: "velocity", factor: 1 };

/** Takes `accel_z_ms2`, `time_s`, `speed_kmh`, `tacho_PART` or "Accel Z (g)" apart. A unit that is not known stays in the name; one that stands alone is a time's. */
export function columnName(heading: string): ColumnName {
  const id = heading.trim();
  if (TACHO.test(id)) return { id, name: id, unit: null, quantity: "pulses", factor: 1 };
  const split = bracketed(id) ?? suffixed(id) ?? bareTime(ELAPSED.exec(id)?.[1] ?? id);
  if (split !== null) return { id, ...split };
  if (TIME.test(id)) return { id, name: id, unit: null, quantity: "time", factor: 1 };
  return { id, name: id, unit: null, quantity: "unknown", factor: 1 };
}

type Split = Omit<ColumnName, "id">;

function bracketed(id: string): Split | null {
  const [, name = "", unit = ""] = BRACKETED.exec(id) ?? [];
  return unit === "" ? null : splitOf(name.trim(), unit.trim());
}

/** A column that is called by a unit of time and nothing else, such as "ms". A minute is more often a minimum. */
function bareTime(unit: string): Split | null {
  const time = recordingUnit(unit);
  return time?.quantity === "time" && !/^min$/i.test(unit) ? { name: "time", unit, ...time } : null;
}

/** The longest ending that is a unit: of `speed_km_h` it is km_h. */
function suffixed(id: string): Split | null {
  for (let at = id.indexOf("_"); at > 0; at = id.indexOf("_", at + 1)) {
    const split = splitOf(id.slice(0, at), id.slice(at + 1));
    if (split !== null) return split;
  }
  return null;
}

function splitOf(name: string, spelling: string): Split | null {
  const unit = unitFor(name, spelling);
  return unit === null ? null : { name, unit: spelling, ...unit };
}

/** A unit as a named column means it: "ms" is milliseconds beside a time and metres per second beside anything else. */
export function unitFor(name: string, spelling: string): RecordingUnit | null {
  const unit = recordingUnit(spelling);
  const isMs = unit?.quantity === "time" && unit.factor === 1e-3;
  if (isMs && !TIME.test(name)) return PER_SECOND;
  if (unit?.quantity === "time" && !TIME.test(name)) return null;
  return unit;
}
