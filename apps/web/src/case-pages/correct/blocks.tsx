import { type Block, limitParams, type PlanResult } from "@halfturn/engine/correction";
import { limitUseText } from "@halfturn/words";
import styles from "./correct-page.module.css";
import type { CorrectionView } from "./correction-view.js";

const textOf = (block: Block, view: CorrectionView): string => {
  const { correction, numbers } = view.catalogue;
  if (block.kind === "limit") return correction.blockLimit(...limitUseText(limitParams(block.use), view.catalogue, view.names));
  const why = view.text.reason(block.reason);
  return block.changes.length === 0 ? why : correction.blockHard(numbers.all(view.changes(block.changes)), why);
};

/** The blocks come gravest first: of one limit of one part the state that is worst. */
function gravest(blocks: readonly Block[]): readonly Block[] {
  const seen = new Set<string>();
  return blocks.filter((block) => {
    const key = block.kind === "limit" ? `${block.use.limit} ${block.use.drivelineId} ${block.use.of}` : JSON.stringify(block.reason);
    return !seen.has(key) && seen.add(key);
  });
}

/** That nothing in stock keeps every limit, what comes nearest, and what is in its way. */
export const Blocks = ({ result, view }: { readonly result: PlanResult; readonly view: CorrectionView }) => {
  const { correction, numbers } = view.catalogue;
  if (result.blockedBy.length === 0) return null;
  return (
    <div className={styles.notice}>
      <h3>{correction.infeasible}</h3>
      {result.nearest ? (
        <p>
          {correction.nearest(result.nearest.changes.length === 0 ? correction.nothing : numbers.all(view.changes(result.nearest.changes)))}
        </p>
      ) : null}
      <p>{correction.blocks}:</p>
      <ul>
        {[...new Set(gravest(result.blockedBy).map((block) => textOf(block, view)))].map((text) => (
          <li key={text}>{text}</li>
        ))}
      </ul>
    </div>
  );
};
