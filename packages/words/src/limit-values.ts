import type { CorrectionReader } from "./correction-reader.js";

/** A value and its limit, in whichever unit the limit has. */
export function limitValues(of: CorrectionReader): { readonly value: string; readonly bound: string } {
  const { numbers } = of;
  return of.has("limitDeg")
    ? { value: numbers.angle(of.value("valueDeg")), bound: numbers.angle(of.value("limitDeg")) }
    : { value: numbers.acceleration(of.value("valueRadS2")), bound: numbers.acceleration(of.value("limitRadS2")) };
}
