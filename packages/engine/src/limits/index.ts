export * from "./default-limits.js";
export * from "./limit-source.js";
export * from "./limits.js";
export * from "./maximum-operating-angle.js";
