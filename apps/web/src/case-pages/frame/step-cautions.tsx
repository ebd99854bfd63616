import { catalogueOf, cautionsOf, type Step } from "@halfturn/words";
import { Icon } from "../../controls/icon.js";
import { useLanguage } from "../../words/use-words.js";
import styles from "./step-cautions.module.css";

/** Steps whose page places each caution beside the work it belongs to; the others have theirs above the page. */
const PLACED_BY_PAGE: readonly Step[] = ["describe", "record", "gauge", "correct", "report"];

/** What has to be heeded in a step, before its page begins. */
export function StepCautions({ step }: { readonly step: Step }) {
  const { cautions, labels } = catalogueOf(useLanguage());
  const texts = PLACED_BY_PAGE.includes(step) ? [] : cautionsOf(cautions, step);
  if (texts.length === 0) return null;
  return (
    <section className={styles.cautions} aria-label={labels.cautions}>
      <Icon name="warn" />
      <div>
        {texts.map((text) => (
          <p key={text}>{text}</p>
        ))}
        <p className={styles.defers}>{cautions.defersTo}</p>
      </div>
    </section>
  );
}
