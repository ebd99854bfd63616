import type { CaseRecording } from "@halfturn/casefile";
import type { Abstained } from "@halfturn/engine/attribution";
import { capital, catalogueOf, probabilityText } from "@halfturn/words";
import { VerdictMark } from "../../../controls/verdict-mark.js";
import { useWords } from "../../../words/use-words.js";
import type { CasePageProps } from "../../case-page.js";
import { accessoryNames } from "../part-names.js";
import styles from "../record-page.module.css";
import { recordWords } from "../words/record-catalogue.js";

export interface KeptVerdictProps extends Pick<CasePageProps, "document" | "settings"> {
  readonly heard: CaseRecording["heard"];
}

/** What was heard in a recording that is kept in the case. */
export function KeptVerdict({ heard, document, settings }: KeptVerdictProps) {
  const words = useWords(recordWords).heard;
  const { orders, numbers, vibration } = catalogueOf(settings.language);
  if (!heard) return null;
  const name = ({ part, order }: { readonly part: string; readonly order: number }): string =>
    orders.orderOf(part, order, accessoryNames(document));
  const { verdict, abstained } = heard;
  if (verdict) {
    return (
      <div className={styles.buttons}>
        <span>{capital(name(verdict))}</span>
        <VerdictMark tone="good">{words.probable(probabilityText(verdict.probability, numbers))}</VerdictMark>
      </div>
    );
  }
  // A record may come from a later version: a reason that is not known is said as none.
  const reason = abstained && Object.hasOwn(vibration.abstained, abstained.reason) ? (abstained.reason as Abstained["reason"]) : "nothing";
  return <p>{vibration.abstained[reason](numbers.any((abstained?.between ?? []).map(name)))}</p>;
}
