export * from "./amounts.js";
export * from "./before-after-pairs.js";
export * from "./change-problem.js";
export * from "./judged-corrections.js";
export * from "./parse-change.js";
export * from "./record-correction.js";
