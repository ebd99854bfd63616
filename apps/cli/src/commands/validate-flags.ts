import type { Language } from "@halfturn/words";

export interface ValidateFlags {
  readonly lang?: Language;
}
