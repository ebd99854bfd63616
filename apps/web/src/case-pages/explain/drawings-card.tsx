import type { DrivelineAnalysis } from "@halfturn/engine/analysis";
import { type FigureOptions, phasingView, planView, sideView } from "@halfturn/figures";
import { useCallback, useMemo, useState } from "react";
import { Card } from "../../controls/card.js";
import { Choice } from "../../controls/choice.js";
import { Figure } from "../../controls/figure.js";
import type { Settings } from "../../device/settings.js";
import { useWords } from "../../words/use-words.js";
import type { Subject } from "../shared/subject.js";
import { explainWords } from "./explain-words.js";
import { DragStage } from "./what-if/drag-stage.js";
import type { Moves } from "./what-if/moves.js";

type View = "side" | "scale" | "above" | "phasing";
const VIEWS: readonly View[] = ["side", "scale", "above", "phasing"];
const DRAWN = { scale: sideView, above: planView, phasing: phasingView } as const;

export interface DrawingsCardProps {
  readonly subject: Subject;
  readonly analysis: DrivelineAnalysis;
  readonly moves: Moves;
  readonly onMove: (moves: Moves) => void;
  readonly settings: Settings;
}

/** The driveline as it lies: to be tried by hand, to scale, from above, and how its yokes stand. */
export const DrawingsCard = ({ subject, analysis, moves, onMove, settings }: DrawingsCardProps) => {
  const words = useWords(explainWords);
  const [view, setView] = useState<View>("side");
  const { picture } = subject;
  const shown = useMemo(() => ({ ...picture, analysis }), [picture, analysis]);
  const draw = useCallback((options: FigureOptions) => (view === "side" ? "" : DRAWN[view](shown, options)), [shown, view]);
  return (
    <Card title={words.drawing}>
      <Choice
        label={words.drawing}
        hideLabel
        value={view}
        onChange={setView}
        options={VIEWS.map((value) => ({ value, label: words.views[value] }))}
      />
      {view === "side" ? (
        <DragStage subject={subject} moved={shown} moves={moves} onMove={onMove} settings={settings} />
      ) : (
        <Figure settings={settings} draw={draw} />
      )}
    </Card>
  );
};
