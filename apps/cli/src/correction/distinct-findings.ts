import type { Prediction } from "@halfturn/engine/correction";
import type { Finding } from "@halfturn/engine/findings";

/** What is found about the ground of a prediction, each once: the same in every state. */
export function distinctFindings({ states }: Prediction): readonly Finding[] {
  const found = (states[0]?.drivelines ?? []).flatMap(({ findings }) => findings);
  return [...new Map(found.map((finding) => [JSON.stringify(finding), finding])).values()];
}
