export * from "./driveline.js";
