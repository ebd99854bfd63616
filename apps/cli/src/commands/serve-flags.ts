import type { Language } from "@halfturn/words";

export interface ServeFlags {
  readonly port: number;
  readonly data?: string;
  readonly database?: string;
  readonly demo: boolean;
  readonly web?: string;
  readonly lang?: Language;
}
