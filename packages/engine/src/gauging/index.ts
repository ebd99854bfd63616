export * from "./causes.js";
export * from "./fuse-gauging.js";
export * from "./gauging.js";
export { fitLinear, type LinearFit } from "./linear-fit.js";
export { observationsOf } from "./observation.js";
export * from "./pose-model.js";
export { standingFindings } from "./standing-findings.js";
