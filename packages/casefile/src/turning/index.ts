export * from "./complaint-range.js";
export * from "./complaint-reach.js";
export * from "./orders-near.js";
export * from "./turning-at.js";
