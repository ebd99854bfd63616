import type { CaseStore } from "@halfturn/store";
import type { ChangeFeed } from "../events/change-feed.js";
import type { Lan } from "../lan/lan.js";
import type { ReportRenderer } from "../reports/report-renderer.js";
import type { WebFiles } from "../web/web-files.js";
import type { Log } from "./log.js";

/** All that the app is given from outside: it has no clock, no disk and no database of its own. */
export interface ServerParts {
  readonly store: CaseStore;
  readonly feed: ChangeFeed;
  /** The built web app; null where there is none. */
  readonly web: WebFiles | null;
  readonly log: Log;
  readonly reports: ReportRenderer;
  /** ISO 8601. */
  readonly now: () => string;
  /** For a case that is taken up as a copy. */
  readonly newId: () => string;
  readonly version: string;
  /** The local network; null while the server serves this machine only. */
  readonly lan: Lan | null;
  /** home: this machine's own screen, which needs no key. lan: devices of the local network, which need one. */
  readonly side: "home" | "lan";
  /** Names that this server answers to, without port. */
  readonly names: readonly string[];
}
