import type { Catalogue } from "../catalogue.js";
import type { Numbers } from "../numbers/numbers.js";
import { cautions } from "./cautions.js";
import { correction } from "./correction.js";
import { explanations } from "./explanations.js";
import { limitFindings } from "./findings-limits.js";
import { missingFindings } from "./findings-missing.js";
import { readingFindings } from "./findings-readings.js";
import { recordingFindings } from "./findings-recording.js";
import { stateFindings } from "./findings-state.js";
import { vibrationFindings } from "./findings-vibration.js";
import { labels } from "./labels.js";
import { orders } from "./orders.js";
import { phrases } from "./phrases.js";
import { problems } from "./problems.js";
import { recording } from "./recording.js";
import { terminal } from "./terminal.js";
import { vibration } from "./vibration.js";

/** English. */
export const en = (numbers: Numbers): Catalogue => ({
  language: "en",
  numbers,
  labels,
  severities: { stop: "Stop", warn: "Warning", note: "Note" },
  findings: { ...stateFindings, ...readingFindings, ...missingFindings, ...limitFindings, ...recordingFindings, ...vibrationFindings },
  problems,
  wholeFile: "the file",
  phrases: phrases(numbers),
  orders: orders(numbers),
  explanations: explanations(numbers),
  cautions,
  correction,
  recording,
  vibration,
  terminal,
});
