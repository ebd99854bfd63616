export * from "./joint-torsion.js";
export * from "./road-test.js";
export * from "./sensor.js";
export * from "./speed-profile.js";
export * from "./tachometer.js";
export * from "./vibration-source.js";
