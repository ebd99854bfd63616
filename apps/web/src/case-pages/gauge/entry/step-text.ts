import type { CaseDriveline } from "@halfturn/casefile";
import type { NameOf } from "@halfturn/words";
import { vehicleEndOf } from "../model/ends.js";
import type { GaugeStep } from "../model/step.js";
import type { GaugeWords } from "../words/gauge-words.js";

/** A step by name: what is read, and where on it. */
export interface StepText {
  readonly title: string;
  readonly where: string;
}

export function stepText(step: GaugeStep, isFace: boolean, { runs }: CaseDriveline, nameOf: NameOf, words: GaugeWords): StepText {
  if (step.kind === "tape") return { title: nameOf(step.shaft), where: words.sideways };
  if (step.kind === "pair") return { title: nameOf(step.to), where: words.zeroOn(nameOf(step.from)) };
  const title = nameOf(step.shaft);
  if (step.place !== "along") return { title, where: words.nearEnd[vehicleEndOf(runs, step.place)] };
  return { title, where: isFace ? words.onFace : words.along };
}

/** The same in one line. */
export const stepLine = (...of: Parameters<typeof stepText>): string => {
  const { title, where } = stepText(...of);
  return `${title}, ${where}`;
};
