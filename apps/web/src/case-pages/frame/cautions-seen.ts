import type { Step } from "@halfturn/words";

const KEY = "halfturn-cautions-seen";

const seen = (): readonly string[] => (localStorage.getItem(KEY) ?? "").split(" ");

/** Whether the cautions of a step were in sight on this device before. */
export const areCautionsSeen = (step: Step): boolean => seen().includes(step);

export function noteCautionsSeen(step: Step): void {
  if (!areCautionsSeen(step)) localStorage.setItem(KEY, [...seen(), step].join(" ").trim());
}
