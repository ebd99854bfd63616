export * from "./path.js";
export * from "./place.js";
export * from "./problem.js";
export * from "./sort-problems.js";
export * from "./suggest.js";
