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

/** Spanish. */
export const es = (numbers: Numbers): Catalogue => ({
  language: "es",
  numbers,
  labels,
  severities: { stop: "Parada", warn: "Aviso", note: "Nota" },
  findings: { ...stateFindings, ...readingFindings, ...missingFindings, ...limitFindings, ...recordingFindings, ...vibrationFindings },
  problems,
  wholeFile: "el archivo",
  phrases: phrases(numbers),
  orders: orders(numbers),
  explanations: explanations(numbers),
  cautions,
  correction,
  recording,
  vibration,
  terminal,
});
