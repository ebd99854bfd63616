export type * from "./case-store.js";
export { StoreFault, type StoreFaultCode } from "./faults/store-fault.js";
export { openStore, type StoreLocation } from "./open-store.js";
