export * from "./amounts.js";
export * from "./before-after-pairs.js";
export * from "./change-problem.js";
export * from "./correction-basis.js";
export * from "./judged-corrections.js";
export * from "./parse-change.js";
export * from "./record-correction.js";
export * from "./taught-geometry.js";
