import { type CorrectionSubject, correctionSubjects, isProved } from "@halfturn/report/browser";
import { useMemo } from "react";
import { Card } from "../../controls/card.js";
import { Column } from "../../controls/column.js";
import { Fold } from "../../controls/fold.js";
import { Message } from "../../controls/message.js";
import { useLanguage, useWords } from "../../words/use-words.js";
import type { CasePageProps } from "../case-page.js";
import { dayText } from "../shared/day-text.js";
import { StepLink } from "../shared/step-link.js";
import { Changes, ProofCard } from "./proof-card.js";
import styles from "./prove-page.module.css";
import { proveWords } from "./prove-words.js";
import { useCorrections } from "./use-corrections.js";

/** Nothing of a report but what its parts need to word themselves. */
const UNDATED = { gaugings: [], date: "1970-01-01T00:00:00Z", toolVersion: "" } as const;

/** Whether the work did what was foretold. */
export const ProvePage = ({ document, settings }: CasePageProps) => {
  const words = useWords(proveWords);
  const { corrections, of, failed } = useCorrections(document);
  const subjects = useMemo(
    () =>
      corrections ? correctionSubjects({ ...UNDATED, case: of, corrections, language: settings.language, units: settings.units }) : null,
    [corrections, of, settings.language, settings.units],
  );
  if (!document.corrections?.length) {
    return (
      <Message title={words.nothing} action={<StepLink kind="main" id={document.id} step="correct" label={words.toCorrect} />}>
        {words.nothingHelp}
      </Message>
    );
  }
  if (!subjects) return <Message title={failed ? words.failed : `${words.working} …`} />;
  const last = subjects.at(-1);
  const earlier = subjects.slice(0, -1).filter(isProved);
  return (
    <Column>
      {last && !isProved(last) ? <NextStep subject={last} /> : null}
      {last && isProved(last) ? <ProofCard subject={last} settings={settings} /> : null}
      {earlier.length > 0 ? (
        <Fold title={words.earlier}>
          {earlier.toReversed().map((subject) => (
            <ProofCard key={subject.reported.correction} subject={subject} settings={settings} />
          ))}
        </Fold>
      ) : null}
    </Column>
  );
};

/** What has to be done before anything can be proved. */
const NextStep = ({ subject }: { readonly subject: CorrectionSubject }) => {
  const words = useWords(proveWords);
  const language = useLanguage();
  const { record, report, catalogue } = subject;
  const made = record.state === "made";
  const when = [
    words.chosenOn(dayText(record.chosenAt, language)),
    ...(record.madeAt ? [words.madeOn(dayText(record.madeAt, language))] : []),
  ].join(", ");
  return (
    <Card title={made ? words.gaugeAgain : words.makeFirst}>
      <Changes subject={subject} />
      <p className={styles.quiet}>{when}.</p>
      <p>{made ? words.gaugeAgainHelp : words.makeFirstHelp}</p>
      <ul className={styles.cautions}>
        <li>{catalogue.cautions.texts["supported-vehicle"]}</li>
        <li>{catalogue.cautions.texts["prove-from-slow"]}</li>
      </ul>
      <div>
        {made ? (
          <StepLink kind="main" id={report.case.id} step="gauge" label={words.toGauge} />
        ) : (
          <StepLink kind="main" id={report.case.id} step="correct" label={words.toCorrect} />
        )}
      </div>
    </Card>
  );
};
