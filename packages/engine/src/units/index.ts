export * from "./angle.js";
export * from "./brand.js";
export * from "./format-quantity.js";
export * from "./parse-quantity.js";
export { fromSi, type QuantityKind, type SiOf, toSi, UNITS, type Unit, type UnitOf } from "./unit-table.js";
