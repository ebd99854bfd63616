export * from "./latest-gaugings.js";
export * from "./sides.js";
export * from "./to-analysis-input.js";
export * from "./to-correction-input.js";
export * from "./to-driveline.js";
export * from "./to-gauging.js";
export * from "./to-limits.js";
export * from "./to-powertrain.js";
