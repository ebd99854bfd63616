import type { BlockJson, PlanJson } from "@halfturn/casefile";
import { limitUseText } from "@halfturn/words";
import { listed } from "./basis-lines.js";
import { type CorrectionView, changesText } from "./correction-view.js";
import { wrap } from "./wrap.js";

/** That nothing in stock keeps every limit, what comes nearest, and the limits in its way. */
export function blockLines({ nearest, blockedBy }: PlanJson, view: CorrectionView): readonly string[] {
  const { correction } = view.words;
  return [
    view.paint("bad", correction.infeasible),
    ...(nearest ? wrap(correction.nearest(changesText(nearest.changes, view)), view.width, "  ") : []),
    view.paint("strong", correction.blocks),
    ...listed([...new Set(gravest(blockedBy).map((block) => blockText(block, view)))], view),
  ];
}

const blockText = (block: BlockJson, view: CorrectionView): string =>
  block.kind === "limit"
    ? view.words.correction.blockLimit(...limitUseText(block, view.words, view.names))
    : block.changes.length === 0
      ? view.text.reason(block)
      : view.words.correction.blockHard(changesText(block.changes, view), view.text.reason(block));

/** The blocks come gravest first: of one limit of one part the state that is worst. */
function gravest(blocks: readonly BlockJson[]): readonly BlockJson[] {
  const seen = new Set<string>();
  return blocks.filter((block) => {
    const key = block.kind === "limit" ? `${block.limit} ${block.driveline} ${block.of}` : JSON.stringify(block);
    return !seen.has(key) && seen.add(key);
  });
}
