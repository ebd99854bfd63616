export * from "./codes.js";
export * from "./finding.js";
