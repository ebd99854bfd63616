import type { AnalysedDriveline, CaseDriveline } from "@halfturn/casefile";
import { shaftsOf } from "@halfturn/casefile";
import { type Catalogue, catalogueOf } from "@halfturn/words";
import { Card } from "../../../controls/card.js";
import { type Tone, VerdictMark } from "../../../controls/verdict-mark.js";
import { useLanguage, useWords } from "../../../words/use-words.js";
import { intervalText, valueText } from "../../shared/estimate-text.js";
import { toneOf } from "../../shared/tone.js";
import { gaugeWords } from "../words/gauge-catalogue.js";
import styles from "./joints-so-far.module.css";

/** A joint whose angle is known already. */
export interface JointSoFar {
  readonly id: string;
  /** The shaft on its driven side. */
  readonly to: string;
  readonly tone: Tone;
  readonly sign: string;
  readonly value: string | null;
  readonly within: string;
  readonly words: string;
}

const SIGNS: Readonly<Record<Tone, string>> = { good: "✓", bad: "▲", low: "▼", doubt: "?", none: "–" };

export const jointsSoFar = (
  driveline: CaseDriveline,
  analysed: AnalysedDriveline | null,
  { labels, numbers }: Catalogue,
): readonly JointSoFar[] =>
  (analysed?.analysis.joints ?? []).map((joint, k) => {
    const tone = toneOf(joint.verdict);
    return {
      id: joint.id,
      to: shaftsOf(driveline)[k + 1] ?? "driven",
      tone,
      sign: SIGNS[tone],
      value: joint.operatingAngle ? valueText(joint.operatingAngle, numbers, "") : null,
      within: intervalText(joint.operatingAngle, numbers),
      words: labels.verdicts[joint.verdict],
    };
  });

export interface JointsSoFarProps {
  readonly joints: readonly JointSoFar[];
  readonly analysed: AnalysedDriveline | null;
  readonly busy: boolean;
}

/** The result as it grows, joint by joint. */
export function JointsSoFar({ joints, analysed, busy }: JointsSoFarProps) {
  const words = useWords(gaugeWords);
  const { labels, numbers } = catalogueOf(useLanguage());
  const cancellation = analysed?.analysis.cancellation;
  const rest = cancellation?.equivalentAngle;
  return (
    <Card title={words.joints} aside={busy ? <span className={styles.busy}>{words.calculating} …</span> : undefined}>
      <ul className={styles.joints} aria-live="polite">
        {joints.map(({ id, value, within, tone, words: verdict }) => (
          <li key={id} className={styles.joint}>
            <strong>{id}</strong>
            <span className={styles.value}>{value ?? "–"}</span>
            <span className={styles.within}>{within}</span>
            <span className={styles.verdict}>
              <VerdictMark tone={tone}>{verdict}</VerdictMark>
            </span>
          </li>
        ))}
      </ul>
      {cancellation && rest ? (
        <p className={styles.whole}>
          {words.whole}: <strong>{valueText(rest, numbers, "")}</strong>{" "}
          <VerdictMark tone={toneOf(cancellation.verdict)}>{labels.verdicts[cancellation.verdict]}</VerdictMark>
        </p>
      ) : (
        <p className={styles.wait}>{words.jointsWait}</p>
      )}
    </Card>
  );
}
