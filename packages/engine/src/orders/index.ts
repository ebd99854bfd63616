export * from "./coincidences.js";
export * from "./rate-interval.js";
export * from "./rolling-circumference.js";
export * from "./rotating-parts.js";
export * from "./tyre-size.js";
