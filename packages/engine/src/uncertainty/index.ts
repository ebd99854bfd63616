export * from "./distribution.js";
export * from "./interval.js";
export * from "./quantile.js";
export * from "./random.js";
export * from "./verdict.js";
