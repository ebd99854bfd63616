export { attribute, attributionSteps } from "./attribute.js";
export * from "./attribution.js";
export * from "./attribution-finding.js";
export type { BlockPlace } from "./fit-run.js";
export type { Reading } from "./follow-speed.js";
export * from "./input.js";
export type { PartOrderName } from "./order-lines.js";
export type { OrderCourse, Resonance } from "./resonance.js";
export { ridgeReference } from "./ridge-reference.js";
