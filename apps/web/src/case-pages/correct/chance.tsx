import type { RankedChoice } from "@halfturn/engine/correction";
import { type Numbers, probabilityBound, probabilityText } from "@halfturn/words";
import { Meter } from "../../controls/meter.js";
import { useWords } from "../../words/use-words.js";
import styles from "./correct-page.module.css";
import { correctWords } from "./correct-words.js";
import type { CorrectionView } from "./correction-view.js";

/** A bound from above says nothing against "less than 1 %", which is one itself. */
const chanceText = (share: number, atMost: boolean, numbers: Numbers): string =>
  atMost && probabilityBound(share) !== "below" ? `≤ ${numbers.share(share)}` : probabilityText(share, numbers);

/** How likely it is that every limit holds in every state; a chance that leaves the slip spline out of account can only be lower with it. */
export const Chance = ({ choice, view }: { readonly choice: RankedChoice; readonly view: CorrectionView }) => {
  const words = useWords(correctWords);
  const { numbers } = view.catalogue;
  const share = choice.probabilityWithin ?? choice.probabilityOfLimits;
  const text = chanceText(share, choice.probabilityWithin === null, numbers);
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
