import type { CorrectionWords } from "../correction-words.js";

export const limits: CorrectionWords["limits"] = {
  "joint-over": "the operating angle",
  "joint-under": "the operating angle",
  "equivalent-angle": "the equivalent angle",
  "driven-acceleration": "the angular acceleration at the driven end",
  "inertia-drive": "the angular acceleration on drive",
  "inertia-coast": "the angular acceleration on coast",
};
