/** What a channel measures. `share`: of a full scale that nobody gave. `pulses`: a tachometer, high where a mark passes. */
export type ChannelQuantity =
  | "time"
  | "acceleration"
  | "velocity"
  | "displacement"
  | "rotation"
  | "pressure"
  | "voltage"
  | "pulses"
  | "share"
  | "unknown";

export interface RecordingUnit {
  readonly quantity: ChannelQuantity;
  /** SI value of one unit. */
  readonly factor: number;
}

/** Standard gravity. Source: 3rd CGPM (1901). */
const GRAVITY = 9.806_65;
/** Source: international yard and pound agreement of 1959. */
const [INCH, FOOT, MILE] = [0.0254, 0.3048, 1609.344];

/** Units by their spelling without blanks, points, signs of power and of division: "m/s^2", "m/s²", "m.s-2" and "ms2" are one. Factors: SI Brochure, 9th edition, 2019. */
const UNITS: Readonly<Record<string, RecordingUnit>> = {
  s: { quantity: "time", factor: 1 },
  sec: { quantity: "time", factor: 1 },
  secs: { quantity: "time", factor: 1 },
  second: { quantity: "time", factor: 1 },
  seconds: { quantity: "time", factor: 1 },
  ms: { quantity: "time", factor: 1e-3 },
  msec: { quantity: "time", factor: 1e-3 },
  millis: { quantity: "time", factor: 1e-3 },
  milliseconds: { quantity: "time", factor: 1e-3 },
  us: { quantity: "time", factor: 1e-6 },
  µs: { quantity: "time", factor: 1e-6 },
  ns: { quantity: "time", factor: 1e-9 },
  min: { quantity: "time", factor: 60 },
  ms2: { quantity: "acceleration", factor: 1 },
  mps2: { quantity: "acceleration", factor: 1 },
  mss: { quantity: "acceleration", factor: 1 },
  mms2: { quantity: "acceleration", factor: 1e-3 },
  cms2: { quantity: "acceleration", factor: 1e-2 },
  gal: { quantity: "acceleration", factor: 1e-2 },
  g: { quantity: "acceleration", factor: GRAVITY },
  mg: { quantity: "acceleration", factor: GRAVITY / 1000 },
  fts2: { quantity: "acceleration", factor: FOOT },
  ins2: { quantity: "acceleration", factor: INCH },
  mps: { quantity: "velocity", factor: 1 },
  mms: { quantity: "velocity", factor: 1e-3 },
  ips: { quantity: "velocity", factor: INCH },
  ins: { quantity: "velocity", factor: INCH },
  kmh: { quantity: "velocity", factor: 1000 / 3600 },
  kph: { quantity: "velocity", factor: 1000 / 3600 },
  mph: { quantity: "velocity", factor: MILE / 3600 },
  mih: { quantity: "velocity", factor: MILE / 3600 },
  kn: { quantity: "velocity", factor: 1852 / 3600 },
  m: { quantity: "displacement", factor: 1 },
  mm: { quantity: "displacement", factor: 1e-3 },
  um: { quantity: "displacement", factor: 1e-6 },
  µm: { quantity: "displacement", factor: 1e-6 },
  in: { quantity: "displacement", factor: INCH },
  mil: { quantity: "displacement", factor: INCH / 1000 },
  rpm: { quantity: "rotation", factor: Math.PI / 30 },
  rmin: { quantity: "rotation", factor: Math.PI / 30 },
  "1min": { quantity: "rotation", factor: Math.PI / 30 },
  hz: { quantity: "rotation", factor: 2 * Math.PI },
  rads: { quantity: "rotation", factor: 1 },
  pa: { quantity: "pressure", factor: 1 },
  v: { quantity: "voltage", factor: 1 },
  mv: { quantity: "voltage", factor: 1e-3 },
  // Of a full scale that the file does not tell: the share itself.
  fs: { quantity: "share", factor: 1 },
};

/** The unit that a spelling names, or null. "ms" alone is milliseconds; a column that is no time reads it as m/s. */
export function recordingUnit(spelling: string): RecordingUnit | null {
  const key = spelling
    .toLowerCase()
    .replaceAll("²", "2")
    .replaceAll("μ", "µ")
    .replaceAll(/[\s/.^*·⋅_()[\]-]/g, "");
  return Object.hasOwn(UNITS, key) ? (UNITS[key] as RecordingUnit) : null;
}
