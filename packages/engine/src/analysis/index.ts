export * from "./input.js";
export * from "./driveline-analysis.js";
export * from "./estimate.js";
