import type { ShaftJson } from "@halfturn/casefile";
import type { NameOf } from "@halfturn/words";
import { signlessAngle } from "./quantity-text.js";
import { table } from "./table.js";
import type { View } from "./view.js";

/** Below half of the last digit shown a shaft is called level. */
const LEVEL_DEG = 0.005;

/** How each shaft lies and which end is lower. */
export function shaftLines(shafts: readonly ShaftJson[], nameOf: NameOf, view: View): readonly string[] {
  const { labels, numbers } = view.words;
  const rows = shafts.map(({ id, inclinationDeg }) =>
    inclinationDeg === null
      ? [nameOf(id), labels.verdicts["not-gauged"]]
      : [nameOf(id), signlessAngle(inclinationDeg, numbers), lowerEnd(inclinationDeg.value, view)],
  );
  return [
    view.paint("strong", labels.shafts),
    ...table([[labels.shaft, labels.inclination].map((text) => view.paint("aside", text)), ...rows]),
  ];
}

function lowerEnd(degrees: number, { words: { labels } }: View): string {
  if (Math.abs(degrees) < LEVEL_DEG) return labels.level;
  return degrees > 0 ? labels.drivenEndLower : labels.sourceEndLower;
}
