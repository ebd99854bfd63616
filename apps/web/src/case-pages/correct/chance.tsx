import type { RankedChoice } from "@halfturn/engine/correction";
import { highestProbabilityText, probabilityText } from "@halfturn/words";
import { Meter } from "../../controls/meter.js";
import { useWords } from "../../words/use-words.js";
import styles from "./correct-page.module.css";
import { correctWords } from "./correct-words.js";
import type { CorrectionView } from "./correction-view.js";

/** How likely it is that every limit holds in every state; a chance that leaves the slip spline out of account can only be lower with it. */
export const Chance = ({ choice, view }: { readonly choice: RankedChoice; readonly view: CorrectionView }) => {
  const words = useWords(correctWords);
  const { numbers } = view.catalogue;
  const share = choice.probabilityWithin ?? choice.probabilityOfLimits;
  const text = choice.probabilityWithin === null ? highestProbabilityText(share, numbers) : probabilityText(share, numbers);
  return (
    <div className={styles.chance}>
      <span className={styles.big}>{text}</span>
      <Meter share={share} label={words.allHold} />
      <span className={styles.quiet}>
        {words.allHold}
        {choice.probabilityWithin === null ? `, ${words.allHoldUnknown}` : ""}
      </span>
    </div>
  );
};
