export * from "./problems/index.js";
export * from "./restore/restore.js";
export { MAX_CASE_BYTES } from "./restore/size.js";
export type * from "./schema/case.js";
export { CASE_FORMAT, CASE_VERSION, caseSchema } from "./schema/case-schema.js";
export { placeOnShaft, placesOf, shaftsOf } from "./schema/place-on-shaft.js";
