import { catalogueOf, cautionsOf, type Step } from "@halfturn/words";
import { useEffect, useState } from "react";
import { Icon } from "../../controls/icon.js";
import { useLanguage, useWords } from "../../words/use-words.js";
import { areCautionsSeen, noteCautionsSeen } from "./cautions-seen.js";
import { type CautionedStep, frameWords } from "./frame-words.js";
import styles from "./step-cautions.module.css";

/** The other steps have each caution beside the work it belongs to. */
const CAUTIONED: readonly Step[] = ["isolate", "explain", "prove"] satisfies readonly CautionedStep[];
const isCautioned = (step: Step): step is CautionedStep => CAUTIONED.includes(step);

/** What has to be heeded in a step, before its page begins: whole on the first visit of a device, from then on one line that opens. */
export const StepCautions = ({ step }: { readonly step: Step }) => (isCautioned(step) ? <Cautions step={step} /> : null);

function Cautions({ step }: { readonly step: CautionedStep }) {
  const words = useWords(frameWords);
  const { cautions, labels } = catalogueOf(useLanguage());
  const [isFirst] = useState(() => !areCautionsSeen(step));
  useEffect(() => noteCautionsSeen(step), [step]);
  return (
    <section aria-label={labels.cautions}>
      <details className={styles.cautions} open={isFirst}>
        <summary className={styles.line}>
          <Icon name="warn" />
          <span className={styles.words}>
            <strong>{words.caution[step]}</strong> <span className={styles.read}>{words.readCautions}</span>
          </span>
        </summary>
        <div className={styles.texts}>
          {cautionsOf(cautions, step).map((text) => (
            <p key={text}>{text}</p>
          ))}
          <p className={styles.defers}>{cautions.defersTo}</p>
        </div>
      </details>
    </section>
  );
}
