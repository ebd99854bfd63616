export { type Restoring, restoreBackup } from "./backup/restore-backup.js";
export type * from "./case-store.js";
export type * from "./devices/device-store.js";
export { StoreFault, type StoreFaultCode } from "./faults/store-fault.js";
export { holdStore, type LetGo } from "./hold-store.js";
export type { StoreLocation } from "./open-database.js";
export { openStore } from "./open-store.js";
