import { type Case, toCorrectionInput } from "@halfturn/casefile";
import type { Change } from "@halfturn/engine/correction";
import { DEFAULT_LIMITS } from "@halfturn/engine/limits";
import { type Ref, useMemo, useState } from "react";
import { Button } from "../../../controls/button.js";
import { Card } from "../../../controls/card.js";
import { Choice } from "../../../controls/choice.js";
import type { Settings } from "../../../device/settings.js";
import { useWords } from "../../../words/use-words.js";
import styles from "../correct-page.module.css";
import type { CorrectionView } from "../correction-view.js";
import { AmountSlider } from "./amount-slider.js";
import { ForetoldFigures } from "./foretold-figures.js";
import { stopsOf } from "./stops.js";
import own from "./try-card.module.css";
import { tryWords } from "./try-words.js";
import { useForesight } from "./use-foresight.js";
import { usePrediction } from "./use-prediction.js";

export interface TryCardProps {
  readonly document: Case;
  readonly changes: readonly Change[];
  readonly onAmount: (adjusterId: string, amount: number) => void;
  readonly onReset: () => void;
  readonly onChoose: (changes: readonly Change[]) => Promise<void>;
  readonly view: CorrectionView;
  readonly settings: Settings;
  readonly ref?: Ref<HTMLDivElement>;
}

const NOTHING: readonly Change[] = [];

/** Sliders for everything on the shelf, and what the vehicle would do. */
export const TryCard = ({ document, changes, onAmount, onReset, onChoose, view, settings, ref }: TryCardProps) => {
  const words = useWords(tryWords);
  const [choosing, setChoosing] = useState(false);
  const [state, setState] = useState<string | null>(null);
  const stops = useMemo(() => stopsOf(toCorrectionInput(document, { defaults: DEFAULT_LIMITS, draws: 100, seed: 1 })), [document]);
  const before = usePrediction(document, NOTHING);
  const after = usePrediction(document, changes);
  useForesight(document, changes, stops, after?.of === document && after.changes === changes);
  const { correction } = view.catalogue;
  const refused = after && !after.outcome.ok ? after.outcome.reasons : [];
  const blocked = after?.outcome.ok ? after.outcome.value.blocked : [];
  const states = after?.outcome.ok ? after.outcome.value.states : [];
  const shown = states.find(({ id }) => id === state) ?? states[0];
  const still = changes.length > 0 && before?.outcome.ok ? before.outcome.value.states.find(({ id }) => id === shown?.id) : undefined;
  const choose = () => {
    setChoosing(true);
    void onChoose(changes).finally(() => setChoosing(false));
  };
  return (
    <div ref={ref}>
      <Card title={words.title}>
        <p className={styles.quiet}>{words.help}</p>
        <div className={own.adjusters}>
          {stops.map((one) => (
            <AmountSlider
              key={one.adjuster.id}
              stops={one}
              amount={changes.find(({ adjusterId }) => adjusterId === one.adjuster.id)?.amount ?? 0}
              view={view}
              onAmount={onAmount}
            />
          ))}
        </div>
        {refused.length > 0 ? <Reasons lines={refused.map(view.text.reason)} /> : null}
        {blocked.length > 0 ? <Reasons title={correction.neverFit} lines={blocked.map(view.text.reason)} /> : null}
        {shown ? (
          <>
            {states.length > 1 ? (
              <Choice
                label={words.state}
                value={shown.id}
                onChange={setState}
                options={states.map(({ id }) => ({ value: id, label: view.names.state(id) }))}
              />
            ) : null}
            <ForetoldFigures
              before={still || null}
              after={shown}
              changed={changes.length > 0}
              document={document}
              view={view}
              settings={settings}
            />
          </>
        ) : refused.length === 0 ? (
          <p>{words.working} …</p>
        ) : null}
        <div className={styles.buttons}>
          <Button
            kind="main"
            onPress={choose}
            isDisabled={choosing || changes.length === 0 || after?.changes !== changes || !after.outcome.ok || blocked.length > 0}
          >
            {words.choose}
          </Button>
          <Button onPress={onReset} isDisabled={changes.length === 0}>
            {words.reset}
          </Button>
        </div>
      </Card>
    </div>
  );
};

const Reasons = ({ title, lines }: { readonly title?: string; readonly lines: readonly string[] }) => (
  <div className={styles.notice} role="status">
    {title === undefined ? null : <h3>{title}</h3>}
    <ul>
      {[...new Set(lines)].map((line) => (
        <li key={line}>{line}</li>
      ))}
    </ul>
  </div>
);
