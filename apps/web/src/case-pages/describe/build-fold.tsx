import { type Case, inPieces, PIECES, type Pieces, withDriveline } from "@halfturn/casefile";
import { memo } from "react";
import { Button } from "../../controls/button.js";
import { Choice } from "../../controls/choice.js";
import { Fold } from "../../controls/fold.js";
import { Icon } from "../../controls/icon.js";
import { useWords } from "../../words/use-words.js";
import type { CasePageProps } from "../case-page.js";
import { editDriveline } from "./edit-case.js";
import styles from "./part.module.css";
import { buildWords } from "./words/build-words.js";

export interface BuildFoldProps extends Pick<CasePageProps, "edit"> {
  readonly index: number;
  readonly name: string;
  /** How many sections it has. */
  readonly sections: number;
  /** Whether something names its sections or joints, or at least the driveline: these must stay, then. */
  readonly named: "parts" | "driveline" | null;
  readonly onRemove: () => void;
}

/** In how many pieces a shaft is, and whether its driveline is there at all. */
export const BuildFold = memo(({ edit, index, name, sections, named, onRemove }: BuildFoldProps) => {
  const words = useWords(buildWords);
  return (
    <Fold title={words.title}>
      {named === "parts" ? (
        <p>{words.partsNamed(words.pieces(sections))}</p>
      ) : (
        <PiecesChoice sections={sections} onChange={(pieces) => edit(editDriveline(index, (driveline) => inPieces(driveline, pieces)))} />
      )}
      {/* Places are told from the first one, so that stays. */}
      {index > 0 && named === null ? (
        <div className={styles.buttons}>
          <Button kind="danger" onPress={onRemove}>
            {words.remove(name)}
          </Button>
        </div>
      ) : null}
      {index > 0 && named !== null ? <p>{words.named}</p> : null}
    </Fold>
  );
});

interface PiecesChoiceProps {
  readonly sections: number;
  readonly onChange: (pieces: Pieces) => void;
}

function PiecesChoice({ sections, onChange }: PiecesChoiceProps) {
  const words = useWords(buildWords);
  const usual = PIECES.map(String);
  // A file may have others: they are shown, and can be left.
  const counts = usual.includes(String(sections)) ? usual : [...usual, String(sections)];
  return (
    <>
      <Choice
        label={words.shaft}
        options={counts.map((count) => ({ value: count, label: words.pieces(Number(count)) }))}
        value={String(sections)}
        onChange={(chosen) => {
          const pieces = PIECES.find((count) => String(count) === chosen);
          if (pieces !== undefined) onChange(pieces);
        }}
      />
      <p className={styles.help}>{words.help}</p>
    </>
  );
}

interface MoreDrivelinesProps extends Pick<CasePageProps, "edit"> {
  readonly drivelines: Case["drivelines"];
}

/** A driveline to the axle that has none yet. */
export function MoreDrivelines({ drivelines, edit }: MoreDrivelinesProps) {
  const words = useWords(buildWords);
  const missing = (["rearward", "forward"] as const).filter((runs) => !drivelines.some((driveline) => driveline.runs === runs));
  if (missing.length === 0) return null;
  return (
    <div className={styles.buttons}>
      {missing.map((runs) => (
        <Button key={runs} onPress={() => edit((document) => withDriveline(document, runs))}>
          <Icon name="add" /> {words.add[runs]}
        </Button>
      ))}
    </div>
  );
}
