import type { StoreFlags } from "./store-flags.js";

export interface BackupFlags extends StoreFlags {
  readonly output: string;
}
