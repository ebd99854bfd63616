import type { CorrectionWords } from "../correction-words.js";

export const limits: CorrectionWords["limits"] = {
  "joint-over": "el ángulo de trabajo",
  "joint-under": "el ángulo de trabajo",
  "equivalent-angle": "el ángulo equivalente",
  "driven-acceleration": "la aceleración angular en el extremo conducido",
  "inertia-drive": "la aceleración angular en tracción",
  "inertia-coast": "la aceleración angular en retención",
};
