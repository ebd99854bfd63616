export * from "./attachment-messages.js";
export * from "./case-messages.js";
export * from "./device-header.js";
export * from "./merge/index.js";
export * from "./pairing-messages.js";
export * from "./refusal.js";
