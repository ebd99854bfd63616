import type { Instruction } from "@halfturn/engine/correction";
import type { CorrectionView } from "./correction-view.js";
import { wrap } from "./wrap.js";

/** The steps of the work, numbered, each with the cautions that belong to it; a caution said before is pointed to. */
export function stepLines(instructions: readonly Instruction[], view: CorrectionView): readonly string[] {
  const { cautions, correction, numbers } = view.words;
  const said = new Map<string, string>();
  const steps = instructions.flatMap((instruction, k) => {
    const number = numbers.plain(k + 1, 0);
    const indent = " ".repeat(6);
    const own = instruction.cautions.filter((code) => !said.has(code));
    const again = [...new Set(instruction.cautions.flatMap((code) => said.get(code) ?? []))];
    for (const code of own) said.set(code, number);
    return [
      ...wrap(view.text.instruction(instruction), view.width, indent, `${number.padStart(4)}. `),
      ...own.flatMap((code) => cautionLines(correction.caution(cautions.texts[code]), indent, view)),
      ...again.flatMap((step) => cautionLines(correction.cautionAsAt(step), indent, view)),
    ];
  });
  return said.size === 0 ? steps : [...steps, ...wrap(cautions.defersTo, view.width, "  ")];
}

const cautionLines = (text: string, indent: string, view: CorrectionView): readonly string[] =>
  wrap(text, view.width, `${indent}  `, indent).map((line) => view.paint("doubt", line));
