import type { AnalysedDriveline, Case } from "@halfturn/casefile";
import type { Settings } from "../device/settings.js";

/** What every page of a case is given. */
export interface CasePageProps {
  readonly document: Case;
  /**
   * Every change of a case goes through here: it can be undone, is kept on the device at once, and is sent when the server answers.
   * Return the same object to change nothing.
   */
  readonly edit: (change: (document: Case) => Case) => void;
  readonly calculation: Calculation;
  readonly settings: Settings;
}

/** What the worker made of the document; of an older one while it is busy with the newest. */
export interface Calculation {
  /** The last gauging of the latest stage of each driveline; null until the first result. */
  readonly analysed: readonly AnalysedDriveline[] | null;
  readonly busy: boolean;
}
