import type { Pairing } from "./pairing.js";

/** What the server needs to let devices in from the local network. */
export interface Lan {
  /** Where the shop can be reached, https://... */
  readonly addresses: readonly string[];
  /** The authority's certificate, PEM. */
  readonly certificate: string;
  readonly pairing: Pairing;
}
