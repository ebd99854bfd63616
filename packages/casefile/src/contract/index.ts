export * from "./analysis-contract.js";
export * from "./analysis-to-json.js";
export * from "./correction-contract.js";
export * from "./orders-contract.js";
export * from "./orders-to-json.js";
export * from "./plan-to-json.js";
export { predictionToJson, stateToJson } from "./prediction-to-json.js";
export { angleQuantity, degrees, quantity } from "./quantity.js";
