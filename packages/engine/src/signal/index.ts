export type { BlockSettings } from "./blocks.js";
export type { PulseNote } from "./clean-pulses.js";
export * from "./order-tracking.js";
export { type ShaftAngle, shaftAngleFromSpeeds } from "./shaft-angle.js";
export type { SignalFault, SignalFaultCode, SignalResult } from "./signal-fault.js";
export * from "./spectrogram.js";
export { averagedSpectrum, peakAmplitudes, rmsAmplitudes, type Spectrum } from "./spectrum.js";
export * from "./tachometer-angle.js";
export * from "./window.js";
