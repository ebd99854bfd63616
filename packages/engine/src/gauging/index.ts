export * from "./gauging.js";
export * from "./pose-model.js";
