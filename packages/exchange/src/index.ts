export * from "./case-messages.js";
