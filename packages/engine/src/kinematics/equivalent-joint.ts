import type { Radians } from "../units/index.js";
import type { ArmMap } from "./arm-map.js";

/**
 * Any chain of joints moves exactly like one cross joint and a constant offset. Everything about its motion follows from one number,
 * `unevenness` k = tan^2(B_eq / 2) = |q| / |p|, in [0, 1).
 */
export const unevennessOf = ({ pRe, pIm, qRe, qIm }: ArmMap): number => Math.hypot(qRe, qIm) / Math.hypot(pRe, pIm);

/** Equivalent angle B_eq of the unevenness, in [0, pi/2). */
export const equivalentAngle = (unevenness: number): Radians => (2 * Math.atan(Math.sqrt(unevenness))) as Radians;

/** Unevenness of a single cross joint at an operating angle: tan^2(B/2). */
export const unevennessOfAngle = (angle: Radians): number => Math.tan(angle / 2) ** 2;

/** Peak-to-peak transmission error in radians: sin(E/2) = tan^2(B/2), the same as tan(E/2) = (sec B - 1) / (2 sqrt(sec B)). */
export const transmissionErrorPeakToPeak = (unevenness: number): Radians => (2 * Math.asin(unevenness)) as Radians;

/** Single amplitude in radians of the 2m-times-a-turn part of the transmission error: k^m / m, the Fourier series of arg(1 + k exp(-2jt)). */
export const orderAmplitude = (unevenness: number, m: 1 | 2): Radians => (unevenness ** m / m) as Radians;

/**
 * Peak angular acceleration of the driven end over squared (uniform) driving speed, dimensionless.
 * a/w^2 = cos B sin^2 B sin 2t / (1 - sin^2 B cos^2 t)^2 at its exact maximum, cos 2t = 4 s / (2 - s + sqrt((2 - s)^2 + 8 s^2)), s = sin^2 B
 * (Khurmi and Gupta, Theory of Machines, ch. 9, gives the acceleration; the exact angle is derived and checked against sampling).
 */
export function peakAccelerationCoefficient(unevenness: number): number {
  const s = (4 * unevenness) / (1 + unevenness) ** 2;
  const cosAngle = (1 - unevenness) / (1 + unevenness);
  const x = (4 * s) / (2 - s + Math.sqrt((2 - s) ** 2 + 8 * s * s));
  return (cosAngle * s * Math.sqrt(1 - x * x)) / (1 - (s * (1 + x)) / 2) ** 2;
}

/** Transmission error in radians at a turn `t` of the source arm from its basis u: turn of the driven arm minus t minus its constant offset. Zero mean. */
export function transmissionErrorAt({ pRe, pIm, qRe, qIm }: ArmMap, t: number): Radians {
  // z + (q/p) conj(z), divided by z: 1 + (q/p) exp(-2jt).
  const size = pRe * pRe + pIm * pIm;
  const re = (qRe * pRe + qIm * pIm) / size;
  const im = (qIm * pRe - qRe * pIm) / size;
  const c = Math.cos(2 * t);
  const s = Math.sin(2 * t);
  return Math.atan2(im * c - re * s, 1 + re * c + im * s) as Radians;
}

/** Driven speed over source speed at a turn `t` of the source arm: det M / |M u|^2. */
export function speedRatioAt({ pRe, pIm, qRe, qIm }: ArmMap, t: number): number {
  const c = Math.cos(t);
  const s = Math.sin(t);
  const re = (pRe + qRe) * c + (qIm - pIm) * s;
  const im = (pIm + qIm) * c + (pRe - qRe) * s;
  return (pRe * pRe + pIm * pIm - qRe * qRe - qIm * qIm) / (re * re + im * im);
}
