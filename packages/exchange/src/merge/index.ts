export { itemKeys } from "./item-keys.js";
export * from "./merge-cases.js";
export type { Place, PlaceStep } from "./place.js";
export { same } from "./same.js";
