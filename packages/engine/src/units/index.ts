export * from "./angle.js";
export * from "./brand.js";
