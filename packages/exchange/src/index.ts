export * from "./attachment-messages.js";
export * from "./case-messages.js";
export * from "./refusal.js";
export * from "./merge/index.js";
