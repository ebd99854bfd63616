export * from "./codes.js";
export * from "./finding.js";
export * from "./recording-faults.js";
