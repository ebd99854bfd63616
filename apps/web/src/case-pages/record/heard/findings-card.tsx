import type { Case } from "@halfturn/casefile";
import type { Finding, Severity } from "@halfturn/engine/findings";
import { catalogueOf, drivelineOfPath, findingText, namesOf } from "@halfturn/words";
import { Card } from "../../../controls/card.js";
import { type Tone, VerdictMark } from "../../../controls/verdict-mark.js";
import type { Settings } from "../../../device/settings.js";
import { useWords } from "../../../words/use-words.js";
import styles from "../record-page.module.css";
import { recordWords } from "../words/record-catalogue.js";

const ORDER: readonly Severity[] = ["stop", "warn", "note"];
const TONES: Readonly<Record<Severity, Tone>> = { stop: "bad", warn: "doubt", note: "none" };
/** Findings that are told in a place of their own. */
const TOLD: ReadonlySet<string> = new Set(["attribution.order-not-observable", "attribution.coincidence"]);

export interface FindingsCardProps {
  readonly findings: readonly Finding[];
  readonly document: Case;
  readonly settings: Settings;
}

/** What had to be put right in a recording, and what to watch out for, gravest first. */
export function FindingsCard({ findings, document, settings }: FindingsCardProps) {
  const words = useWords(recordWords).heard;
  const catalogue = catalogueOf(settings.language, settings.units);
  const shown = ORDER.flatMap((severity) => findings.filter((finding) => finding.severity === severity && !TOLD.has(finding.code)));
  if (shown.length === 0) return null;
  return (
    <Card title={words.findings}>
      <ul className={styles.findings}>
        {shown.map((finding) => {
          const { title, says, doNext } = findingText(
            catalogue,
            finding,
            namesOf(document, drivelineOfPath(document, finding.path), catalogue),
          );
          return (
            <li key={`${finding.code} ${finding.path}`} className={styles.stack}>
              <h3>{title}</h3>
              <div>
                <VerdictMark tone={TONES[finding.severity]}>{catalogue.severities[finding.severity]}</VerdictMark>
              </div>
              <p>{says}</p>
              <p>
                <strong>{words.remedy}:</strong> {doNext}
              </p>
            </li>
          );
        })}
      </ul>
    </Card>
  );
}
