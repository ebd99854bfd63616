import { comparisonView, type FigureOptions } from "@halfturn/figures";
import {
  type Block,
  type CorrectedDriveline,
  type CorrectionSubject,
  foretoldPicture,
  gaugedPicture,
  proveSections,
} from "@halfturn/report/browser";
import { useCallback, useMemo } from "react";
import { Card } from "../../controls/card.js";
import { Figure } from "../../controls/figure.js";
import { Fold } from "../../controls/fold.js";
import type { Settings } from "../../device/settings.js";
import { useWords } from "../../words/use-words.js";
import { BlockView } from "../shared/blocks/block-view.js";
import { ProofNumbers } from "./proof-numbers.js";
import styles from "./prove-page.module.css";
import { proveWords } from "./prove-words.js";

export interface ProofProps {
  readonly subject: CorrectionSubject;
  readonly settings: Settings;
}

/** One correction that was gauged again: whether it came out as foretold, what to look at where it did not, and every number. */
export const ProofCard = ({ subject, settings }: ProofProps) => {
  const words = useWords(proveWords);
  const sections = useMemo(() => proveSections([subject], "").filter(({ blocks }) => blocks.length > 0), [subject]);
  return (
    <>
      {sections.map(({ title, blocks }) => (
        <Card key={title} title={title}>
          <Changes subject={subject} />
          <Blocks blocks={blocks.filter(({ kind }) => kind !== "figure" && kind !== "table")} />
          {subject.drivelines.map((on) => (
            <section key={on.driveline.id} className={styles.figures}>
              <h3>
                {on.name}: {words.figures}
              </h3>
              <ProofNumbers subject={subject} on={on} />
              <ProofFigure subject={subject} on={on} settings={settings} />
            </section>
          ))}
          <Fold title={words.everyNumber}>
            <Blocks blocks={blocks.filter(({ kind }) => kind === "table")} />
          </Fold>
        </Card>
      ))}
    </>
  );
};

/** The blocks of one proof are never moved, and some have no name. */
const Blocks = ({ blocks }: { readonly blocks: readonly Block[] }) =>
  // biome-ignore lint/suspicious/noArrayIndexKey: see above
  blocks.map((block, k) => <BlockView key={k} block={block} level={3} />);

export const Changes = ({ subject: { record, report, text } }: { readonly subject: CorrectionSubject }) => (
  <ul className={styles.changes}>
    {record.changes.map((change) => (
      <li key={change.adjuster}>{text.change(change, report.case.adjusters?.find(({ id }) => id === change.adjuster)?.kind)}</li>
    ))}
  </ul>
);

/** Before, foretold and measured under one another, by one scale and in the colours of the screen. */
const ProofFigure = ({ subject, on, settings }: ProofProps & { readonly on: CorrectedDriveline }) => {
  const words = useWords(proveWords);
  const { correction } = subject.catalogue;
  const compared = useMemo(() => {
    const state = on.foretold.find(({ asGauged }) => asGauged);
    const foretold = state && foretoldPicture(subject, on, state);
    return [
      ...(on.before ? [{ name: words.before, picture: gaugedPicture(subject, on, on.before) }] : []),
      ...(foretold ? [{ name: correction.foretold, picture: foretold }] : []),
      ...(on.after ? [{ name: correction.measured, picture: gaugedPicture(subject, on, on.after) }] : []),
    ];
  }, [subject, on, words, correction]);
  const draw = useCallback((options: FigureOptions) => comparisonView(compared, options), [compared]);
  if (!on.after || compared.length < 2) return null;
  return <Figure settings={settings} draw={draw} />;
};
