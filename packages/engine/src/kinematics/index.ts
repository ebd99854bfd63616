export * from "./arm-map.js";
export * from "./bench-rule.js";
export * from "./best-phasing.js";
export * from "./chain.js";
export * from "./driveline.js";
export * from "./equivalent-joint.js";
export * from "./joint-map.js";
export * from "./motion-scope.js";
