import type { Case, CaseAdjuster } from "@halfturn/casefile";
import { useState } from "react";
import { Button } from "../../../controls/button.js";
import { Card } from "../../../controls/card.js";
import { Fold } from "../../../controls/fold.js";
import { useWords } from "../../../words/use-words.js";
import { AdjusterForm } from "./adjuster-form.js";
import { type AdjusterKind, freeId, kindsFor, newAdjuster, usualParts } from "./new-adjuster.js";
import styles from "./shelf-card.module.css";
import { shelfWords } from "./shelf-words.js";

export interface ShelfCardProps {
  readonly document: Case;
  readonly edit: (change: (document: Case) => Case) => void;
}

/** What could be fitted or moved: to be added to, put right and taken off. */
export const ShelfCard = ({ document, edit }: ShelfCardProps) => {
  const words = useWords(shelfWords);
  const [added, setAdded] = useState<string | null>(null);
  const adjusters = document.adjusters ?? [];
  const [driveline] = document.drivelines;
  const change = (id: string, to: CaseAdjuster | null) =>
    edit((before) => ({
      ...before,
      adjusters: (before.adjusters ?? []).flatMap((adjuster) => (adjuster.id === id ? (to ?? []) : adjuster)),
    }));
  const add = (kind: AdjusterKind) => {
    if (!driveline) return;
    const id = freeId(kind, adjusters);
    setAdded(id);
    edit((before) => ({ ...before, adjusters: [...(before.adjusters ?? []), newAdjuster(kind, id, driveline, words.kinds[kind])] }));
  };
  const addUsual = (to: Case["drivelines"][number]) =>
    edit((before) => (before.adjusters?.length ? before : { ...before, adjusters: usualParts(to, (kind) => words.kinds[kind]) }));
  return (
    <Card title={words.title}>
      <p className={styles.quiet}>{words.help}</p>
      {adjusters.length === 0 && driveline ? (
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
            <AdjusterForm
              document={document}
              adjuster={adjuster}
              onChange={(to) => change(adjuster.id, to)}
              onRemove={() => change(adjuster.id, null)}
            />
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
