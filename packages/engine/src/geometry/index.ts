export * from "./direction.js";
export * from "./vec3.js";
