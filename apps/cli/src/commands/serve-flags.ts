import type { StoreFlags } from "./store-flags.js";

export interface ServeFlags extends StoreFlags {
  readonly port: number;
  readonly demo: boolean;
  readonly lan: boolean;
  readonly web?: string;
}
