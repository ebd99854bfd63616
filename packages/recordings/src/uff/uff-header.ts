import { type ColumnName, columnName, unitFor } from "../channels/column-name.js";
import { type RecordingResult, recordingFault, recordingValue } from "../recording-result.js";

/** The eleven records at the head of a data set 58, as far as a recording needs them. */
export interface UffHeader {
  /** 1 = time response; any other is a spectrum or the like. */
  readonly functionType: number;
  readonly abscissaType: number;
  readonly ordinate: "single" | "double" | "complex";
  readonly count: number;
  readonly even: boolean;
  readonly start: number;
  readonly step: number;
  /** Seconds per unit of the abscissa. */
  readonly timeFactor: number;
  readonly column: ColumnName;
  /** Whether the file names no unit and SI was taken for it. */
  readonly unitTaken: boolean;
}

export const HEADER_LINES = 11;
/** Code of time as what a data set runs over. */
const TIME = 17;
const [TIME_RESPONSE, GENERAL] = [1, 0];
/** What a data type's code says where no unit is written. */
const SI_OF_TYPE: Readonly<Record<number, string>> = { 8: "m", 11: "m/s", 12: "m/s^2", 15: "Pa" };
const ORDINATES: Readonly<Record<string, UffHeader["ordinate"]>> = { 2: "single", 4: "double", 5: "complex", 6: "complex" };

/** A function of time: the only kind that a road test is. */
export const isTimeSignal = ({ functionType, abscissaType, ordinate }: UffHeader): boolean =>
  ordinate !== "complex" && (functionType === TIME_RESPONSE || (functionType === GENERAL && abscissaType === TIME));

/** Cuts a record into the fields of a Fortran format. */
function fields(line: string, widths: readonly number[]): readonly string[] {
  let at = 0;
  return widths.map((width) => {
    const field = line.slice(at, at + width).trim();
    at += width;
    return field;
  });
}

const numberOf = (field: string): number => (field === "" ? 0 : Number(field.toLowerCase().replace("d", "e")));
const textOf = (field: string): string => (field.toUpperCase() === "NONE" ? "" : field);

/**
 * Reads the header of a data set 58, lines without their ends. place: where the set starts, for faults.
 * Source: layout of universal data set 58, Structural Dynamics Research Laboratory, University of Cincinnati.
 */
export function readUffHeader(lines: readonly string[], place: string): RecordingResult<UffHeader> {
  if (lines.length < HEADER_LINES) return recordingFault("recording.part-missing", place, { part: "58: 11 records" });
  const [functionType = "", , , , entity = "", node = "", direction = ""] = fields(lines[5] as string, [5, 10, 5, 10, 11, 10, 4]);
  const [ordinateType = "", points = "", spacing = "", start = "", step = ""] = fields(lines[6] as string, [10, 10, 10, 13, 13, 13]);
  const bad = [functionType, ordinateType, points, spacing, start, step].find((field) => !Number.isFinite(numberOf(field)));
  if (bad !== undefined) return recordingFault("recording.header-contradicts", place, { field: "58", got: bad, expected: "number" });
  const ordinate = ORDINATES[numberOf(ordinateType)];
  if (ordinate === undefined) return recordingFault("recording.encoding-unsupported", place, { encoding: `58: ${ordinateType}` });
  const count = numberOf(points);
  if (!Number.isInteger(count) || count < 0)
    return recordingFault("recording.header-contradicts", place, { field: "number of values", got: points, expected: ">= 1" });
  const abscissa = axisOf(lines[7] as string);
  const axis = axisOf(lines[8] as string);
  const even = numberOf(spacing) === 1;
  const timeFactor = unitFor("time", abscissa.unit)?.factor ?? 1;
  if (even && !(numberOf(step) > 0))
    return recordingFault("recording.header-contradicts", place, { field: "increment", got: step, expected: "> 0" });
  const name = textOf(lines[0]?.trim() ?? "") || `${textOf(entity) || "point"}_${numberOf(node)}_${numberOf(direction)}`;
  return recordingValue({
    functionType: numberOf(functionType),
    abscissaType: abscissa.type,
    ordinate,
    count,
    even,
    start: numberOf(start) * timeFactor,
    step: numberOf(step) * timeFactor,
    timeFactor,
    ...columnOf(name, axis),
  });
}

interface Axis {
  readonly type: number;
  readonly unit: string;
}

function axisOf(line: string): Axis {
  const [type = "", , , , , unit = ""] = fields(line, [10, 5, 5, 5, 21, 21]);
  return { type: numberOf(type), unit: textOf(unit) };
}

/** The unit label decides; then the name; then the code of the data type. */
function columnOf(name: string, { type, unit }: Axis): Pick<UffHeader, "column" | "unitTaken"> {
  const named = columnName(name);
  const labelled = unit === "" ? null : unitFor(named.name, unit);
  if (labelled !== null) return { column: { ...named, unit, ...labelled }, unitTaken: false };
  const taken = SI_OF_TYPE[type];
  if (named.quantity !== "unknown" || unit !== "" || taken === undefined)
    return { column: { ...named, unit: unit || named.unit }, unitTaken: false };
  return { column: { ...named, unit: taken, ...(unitFor(name, taken) as NonNullable<ReturnType<typeof unitFor>>) }, unitTaken: true };
}
