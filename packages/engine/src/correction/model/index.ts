export * from "./adjuster.js";
export * from "./axle.js";
export * from "./correction-driveline.js";
export * from "./correction-input.js";
export * from "./reason.js";
export * from "./stock.js";
export * from "./vehicle-frame.js";
export * from "./vehicle-state.js";
