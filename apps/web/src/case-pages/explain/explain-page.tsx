import type { FindingCode } from "@halfturn/engine/findings";
import { useMemo, useState } from "react";
import { flushSync } from "react-dom";
import { Card } from "../../controls/card.js";
import { Choice } from "../../controls/choice.js";
import { Column } from "../../controls/column.js";
import { Message } from "../../controls/message.js";
import { useFollowed } from "../../controls/use-followed.js";
import { VerdictMark } from "../../controls/verdict-mark.js";
import type { Settings } from "../../device/settings.js";
import { useWords } from "../../words/use-words.js";
import type { CasePageProps } from "../case-page.js";
import { type Subject, subjectOf } from "../shared/subject.js";
import { toneOf } from "../shared/tone.js";
import { CancellationCard } from "./cancellation-card.js";
import { DrawingsCard } from "./drawings-card.js";
import styles from "./explain-page.module.css";
import { explainWords } from "./explain-words.js";
import { FindingsCard } from "./findings-card.js";
import { headlineOf } from "./headline.js";
import { HEADLINES } from "./headline-words.js";
import { JointList } from "./joint-list.js";
import { LimitsFold } from "./limits-fold.js";
import { MotionCard } from "./motion-card.js";
import { SurenessCard } from "./sureness-card.js";
import { isMoved, type Moves, unmoved } from "./what-if/moves.js";
import { useMovedAnalysis } from "./what-if/use-moved-analysis.js";
import { WhatIfBar } from "./what-if/what-if-bar.js";

/** What the readings mean: the answer in a sentence, then the drawing, the joints, what they leave, and how sure it is. */
export const ExplainPage = ({ document, edit, calculation, settings }: CasePageProps) => {
  const words = useWords(explainWords);
  const [wanted, setWanted] = useState<string | null>(null);
  const { analysed } = calculation;
  const subjects = useMemo(
    () => (analysed ?? []).flatMap((one) => subjectOf(document, one, settings) ?? []),
    [analysed, document, settings],
  );
  const subject = subjects.find(({ analysis }) => analysis.drivelineId === wanted) ?? subjects[0];
  const accept = (code: FindingCode) =>
    edit((before) => ({ ...before, acceptedFindings: [...(before.acceptedFindings ?? []), { code, at: new Date().toISOString() }] }));
  if (!analysed) return <Message title={`${words.working} …`} />;
  if (!subject || !document.gauging?.length) return <Message title={words.notGauged}>{words.notGaugedHelp}</Message>;
  return (
    <Column>
      {subjects.length > 1 ? (
        <Choice
          label={words.drivelines}
          value={subject.analysis.drivelineId}
          onChange={setWanted}
          options={subjects.map(({ analysis, name }) => ({ value: analysis.drivelineId, label: name }))}
        />
      ) : null}
      <Explained key={subject.analysis.drivelineId} subject={subject} settings={settings} onAccept={accept} />
    </Column>
  );
};

interface ExplainedProps {
  readonly subject: Subject;
  readonly settings: Settings;
  readonly onAccept: (code: FindingCode) => void;
}

const Explained = ({ subject, settings, onAccept }: ExplainedProps) => {
  const { analysis: measured, catalogue, nameOf, name } = subject;
  const joints = subject.input.driveline.joints.length;
  const [moves, setMoves] = useState<Moves>(() => unmoved(joints));
  // A finger's move comes just before a frame: drawn at once it is in that frame, drawn when there is time it is in the next.
  const move = (next: Moves): void => flushSync(() => setMoves(next));
  const trying = isMoved(moves);
  const analysis = useMovedAnalysis(subject, moves);
  // The drawing under the finger goes first; the heavier figures follow as the device can.
  const followed = useFollowed(analysis);
  const words = useWords(HEADLINES);
  const { labels, numbers } = catalogue;
  const headline = headlineOf(analysis, { words, numbers, jointName: nameOf });
  return (
    <>
      <Card title={name} {...(subject.stage ? { aside: labels.stages[subject.stage] } : {})}>
        <div className={styles.headline}>
          <p className={styles.sentence}>{headline.text}</p>
          <VerdictMark tone={toneOf(headline.verdict)}>{labels.verdicts[headline.verdict]}</VerdictMark>
        </div>
      </Card>
      {measured.withheld ? <FindingsCard subject={subject} onAccept={onAccept} /> : null}
      <DrawingsCard subject={subject} analysis={analysis} moves={moves} onMove={move} settings={settings} />
      <Card title={labels.joints}>
        <JointList subject={subject} analysis={analysis} measured={trying ? measured : null} />
        <LimitsFold subject={subject} />
      </Card>
      <div className={styles.below}>
        <CancellationCard subject={subject} analysis={followed} settings={settings} />
      </div>
      <div className={styles.below}>
        <MotionCard subject={subject} analysis={followed} settings={settings} />
      </div>
      <SurenessCard subject={subject} />
      {measured.withheld ? null : <FindingsCard subject={subject} onAccept={onAccept} />}
      {trying ? <WhatIfBar onBack={() => setMoves(unmoved(joints))} /> : null}
    </>
  );
};
