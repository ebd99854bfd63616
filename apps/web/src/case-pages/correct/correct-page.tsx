import { type Case, correctionBasis } from "@halfturn/casefile";
import { type Change, instructionsFor } from "@halfturn/engine/correction";
import { DEFAULT_LIMITS } from "@halfturn/engine/limits";
import { useMemo, useRef, useState } from "react";
import { Card } from "../../controls/card.js";
import { Column } from "../../controls/column.js";
import { Message } from "../../controls/message.js";
import { useWords } from "../../words/use-words.js";
import { predictCase } from "../../worker/worker-client.js";
import type { CasePageProps } from "../case-page.js";
import { Answers } from "./answers.js";
import { ChosenCard } from "./chosen-card.js";
import { correctWords } from "./correct-words.js";
import { type CorrectionView, correctionViewOf } from "./correction-view.js";
import { PlansCard } from "./plans-card.js";
import { dropped, markedMade, markedNotMade, type Recordable, recorded } from "./recorded.js";
import { ShelfCard } from "./shelf/shelf-card.js";
import { withAmount } from "./try/stops.js";
import { TryCard } from "./try/try-card.js";
import { type PlanWish, usePlan } from "./use-plan.js";

const now = (): string => new Date().toISOString();

/** What to change: the work that was chosen, the best plans, quick answers, sliders to try, and the shelf that it all comes from. */
export const CorrectPage = (props: CasePageProps) => {
  const { document, edit, settings } = props;
  const words = useWords(correctWords);
  const view = useMemo(() => correctionViewOf(document, settings.language, settings.units), [document, settings.language, settings.units]);
  const last = document.corrections?.at(-1);
  const gauged = (document.gauging?.length ?? 0) > 0;
  return (
    <Column>
      {last ? (
        <ChosenCard
          correction={last}
          view={view}
          onMade={() => edit((before) => markedMade(before, now()))}
          onNotMade={() => edit((before) => markedNotMade(before, now()))}
          onDrop={() => edit((before) => dropped(before, now()))}
        />
      ) : null}
      {!gauged ? <Message title={words.gaugeFirst}>{words.gaugeFirstHelp}</Message> : null}
      {gauged && document.adjusters?.length ? <Planning {...props} view={view} /> : null}
      {gauged && !document.adjusters?.length ? (
        <Card title={words.best}>
          <p>{words.noParts}</p>
        </Card>
      ) : null}
      <ShelfCard document={document} edit={edit} />
    </Column>
  );
};

const Planning = ({ document, edit, settings, view }: CasePageProps & { readonly view: CorrectionView }) => {
  const [wish, setWish] = useState<PlanWish>({ maxChanges: 2, leaveAxle: false });
  const [changes, setChanges] = useState<readonly Change[]>([]);
  const search = usePlan(document, wish);
  const trying = useRef<HTMLDivElement>(null);
  const top = useRef<HTMLDivElement>(null);
  const record = (plan: Recordable) => {
    edit((before) => recorded(before, plan, now()));
    top.current?.parentElement?.firstElementChild?.scrollIntoView({ block: "start" });
  };
  const tryThem = (tried: readonly Change[]) => {
    setChanges(tried.map(({ adjusterId, amount }) => ({ adjusterId, amount })));
    trying.current?.scrollIntoView({ block: "start", behavior: "smooth" });
  };
  const chooseTried = async (tried: readonly Change[]): Promise<void> => {
    const plan = await foretold(document, tried);
    if (plan) record(plan);
  };
  return (
    <>
      <div ref={top}>
        <PlansCard search={search} wish={wish} onWish={setWish} view={view} onChoose={record} onTry={tryThem} />
      </div>
      {search.answer?.ok ? <Answers result={search.answer.value} view={view} onTry={tryThem} /> : null}
      <TryCard
        ref={trying}
        document={document}
        changes={changes}
        onAmount={(adjusterId, amount) => setChanges((before) => withAmount(before, adjusterId, amount))}
        onReset={() => setChanges([])}
        onChoose={chooseTried}
        view={view}
        settings={settings}
      />
    </>
  );
};

/** Changes set by hand as they go on record: foretold in full, with the work they ask for; null where they cannot be made. */
async function foretold(document: Case, changes: readonly Change[]): Promise<Recordable | null> {
  const outcome = await predictCase(document, changes);
  const { input } = correctionBasis(document, { defaults: DEFAULT_LIMITS, draws: 100, seed: 1 });
  const instructions = instructionsFor(input, changes);
  return outcome.ok && instructions.ok ? { changes, states: outcome.value.states, instructions: instructions.value } : null;
}
