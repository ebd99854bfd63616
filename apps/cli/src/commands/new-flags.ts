import type { Layout } from "@halfturn/casefile";
import type { Language } from "@halfturn/words";

export interface NewFlags {
  readonly layout: Layout;
  readonly title: string;
  readonly force: boolean;
  readonly lang?: Language;
}
