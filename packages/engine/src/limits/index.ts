export * from "./limits.js";
