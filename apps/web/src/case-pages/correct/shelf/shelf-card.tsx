import type { Case, CaseAdjuster } from "@halfturn/casefile";
import { catalogueOf, drivelineName } from "@halfturn/words";
import { useState } from "react";
import { Button } from "../../../controls/button.js";
import { Card } from "../../../controls/card.js";
import { Choice } from "../../../controls/choice.js";
import { Fold } from "../../../controls/fold.js";
import { DraftScope } from "../../../device/draft-scope.js";
import { useMoveDrafts } from "../../../device/kept-draft.js";
import { useLanguage, useWords } from "../../../words/use-words.js";
import { AdjusterForm } from "./adjuster-form.js";
import { type AdjusterKind, freeId, kindsFor, newAdjuster, usualParts } from "./new-adjuster.js";
import styles from "./shelf-card.module.css";
import { shelfWords } from "./shelf-words.js";

export interface ShelfCardProps {
  readonly document: Case;
  readonly edit: (change: (document: Case) => Case) => void;
}

const partOf = (id: string): string => `part ${id}`;

/** What could be fitted or moved: to be added to, put right and taken off. */
export const ShelfCard = ({ document, edit }: ShelfCardProps) => {
  const words = useWords(shelfWords);
  const [added, setAdded] = useState<string | null>(null);
  const adjusters = document.adjusters ?? [];
  const [at, setAt] = useState(0);
  const catalogue = catalogueOf(useLanguage());
  const isOne = document.drivelines.length === 1;
  const driveline = document.drivelines[at] ?? document.drivelines[0];
  /** Of a vehicle with several drivelines each part says which one it belongs to. */
  const labelOf = (kind: AdjusterKind): string =>
    isOne || kind === "mount-spacer" ? words.kinds[kind] : `${words.kinds[kind]}, ${drivelineName(document, at, catalogue)}`;
  const hasNone = (all: readonly CaseAdjuster[]): boolean =>
    !all.some((adjuster) => "driveline" in adjuster && adjuster.driveline === driveline?.id);
  const change = (id: string, to: CaseAdjuster | null) =>
    edit((before) => ({
      ...before,
      adjusters: (before.adjusters ?? []).flatMap((adjuster) => (adjuster.id === id ? (to ?? []) : adjuster)),
    }));
  const moveDrafts = useMoveDrafts();
  const remove = (id: string) => {
    // The next one of its kind may get the same id.
    moveDrafts(partOf(id), null);
    change(id, null);
  };
  const add = (kind: AdjusterKind) => {
    if (!driveline) return;
    const id = freeId(kind, adjusters);
    setAdded(id);
    edit((before) => ({ ...before, adjusters: [...(before.adjusters ?? []), newAdjuster(kind, id, driveline, labelOf(kind))] }));
  };
  const addUsual = (to: Case["drivelines"][number]) =>
    edit((before) => {
      const { adjusters: all = [] } = before;
      return hasNone(all) ? { ...before, adjusters: [...all, ...usualParts(to, labelOf, all)] } : before;
    });
  return (
    <Card title={words.title}>
      <p className={styles.quiet}>{words.help}</p>
      {isOne ? null : (
        <Choice
          label={words.driveline}
          value={String(at)}
          options={document.drivelines.map((_, k) => ({ value: String(k), label: drivelineName(document, k, catalogue) }))}
          onChange={(value) => setAt(Number(value))}
        />
      )}
      {driveline && (isOne ? adjusters.length === 0 : hasNone(adjusters)) ? (
        <div className={styles.empty}>
          <p>{words.usualHelp}</p>
          <Button kind="main" onPress={() => addUsual(driveline)}>
            {words.usual}
          </Button>
        </div>
      ) : null}
      <div>
        {adjusters.map((adjuster) => (
          <Fold
            key={adjuster.id}
            open={adjuster.id === added}
            title={
              <span className={styles.line}>
                <span>{adjuster.label || adjuster.id}</span> <span className={styles.quiet}>{words.kinds[adjuster.kind]}</span>
              </span>
            }
          >
            <DraftScope part={partOf(adjuster.id)}>
              <AdjusterForm
                document={document}
                adjuster={adjuster}
                onChange={(to) => change(adjuster.id, to)}
                onRemove={() => remove(adjuster.id)}
              />
            </DraftScope>
          </Fold>
        ))}
      </div>
      <Fold title={words.add} open={adjusters.length === 0}>
        <div className={styles.buttons}>
          {driveline
            ? kindsFor(driveline).map((kind) => (
                <Button key={kind} onPress={() => add(kind)}>
                  <span aria-hidden="true">+</span> {words.kinds[kind]}
                </Button>
              ))
            : null}
        </div>
      </Fold>
    </Card>
  );
};
