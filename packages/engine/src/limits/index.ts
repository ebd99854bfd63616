export * from "./default-limits.js";
export * from "./limits.js";
export * from "./maximum-operating-angle.js";
