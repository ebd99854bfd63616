import type { Catalogue } from "@halfturn/words";
import type { Paint } from "./paint.js";

/** How to show things: words of one language, colours or none, and the width of the page. */
export interface View {
  readonly words: Catalogue;
  readonly paint: Paint;
  readonly width: number;
}
