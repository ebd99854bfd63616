import type { MergeConflict } from "@halfturn/exchange";
import { catalogueOf, namesOf } from "@halfturn/words";
import { Button } from "../../controls/button.js";
import { Sheet } from "../../controls/sheet.js";
import type { DeviceCase } from "../../device/device-case.js";
import { useSettings } from "../../settings/settings-context.js";
import { fieldNames } from "../../words/field-names.js";
import { useWords } from "../../words/use-words.js";
import { conflictField } from "./conflict-field.js";
import styles from "./conflict-sheet.module.css";
import { conflictWords } from "./conflict-words.js";
import { type ValueWords, valueLines } from "./value-lines.js";
import { numbersByKey, valueNumber } from "./value-number.js";

export interface ConflictSheetProps {
  readonly record: DeviceCase;
  readonly onChoose: (conflict: MergeConflict, side: "mine" | "theirs") => void;
  readonly onClose: () => void;
}

/** The key that the last step of a path names. */
const keyOf = (path: string): string => (path.split(".").at(-1) ?? "").replace(/\[[^\]]*\]$/, "");

/** Field by field, what this device has and what the other has: one press each, and nothing is lost before it. */
export function ConflictSheet({ record, onChoose, onClose }: ConflictSheetProps) {
  const words = useWords(conflictWords);
  const names = useWords(fieldNames);
  const { language, units } = useSettings().settings;
  const catalogue = catalogueOf(language, units);
  const { conflicts, document } = record;
  const nameOf = namesOf(document, 0, catalogue);
  const { labels, numbers } = catalogue;
  const codes: Readonly<Record<string, string>> = {
    ...labels.jointKinds,
    ...labels.rideHeights,
    ...labels.wheelSupports,
    ...labels.stages,
    left: labels.left,
    right: labels.right,
    "driven-end": labels.drivenEndLower,
    "source-end": labels.sourceEndLower,
  };
  const say = {
    names,
    yes: words.yes,
    no: words.no,
    nothing: words.nothing,
    code: (value: string) => codes[value] ?? value,
  };
  /** The lines of a value of a conflict, its numbers told apart from those that it is chosen among. */
  const linesIn = ({ path, base, mine, theirs }: MergeConflict): ((value: unknown) => readonly string[]) => {
    const key = keyOf(path);
    const among = numbersByKey([base, mine, theirs], key);
    const inUnits: ValueWords = { ...say, number: (value, of) => valueNumber(value, of, numbers, among.get(of)) };
    return (value) => valueLines(value, inUnits, key);
  };
  const chooseAll = (side: "mine" | "theirs") => () => {
    for (const conflict of conflicts) onChoose(conflict, side);
  };
  return (
    <Sheet title={words.title} close={words.close} onClose={onClose}>
      <p>{words.explain}</p>
      {conflicts.map((conflict) => (
        <section key={conflict.path} className={styles.conflict}>
          <h3>{conflictField(conflict.path, names, nameOf)}</h3>
          {conflict.base === undefined ? null : (
            <p className={styles.before}>
              {words.before}: {linesIn(conflict)(conflict.base).join(", ")}
            </p>
          )}
          <div className={styles.sides}>
            {(["mine", "theirs"] as const).map((side) => (
              <Button key={side} size="large" onPress={() => onChoose(conflict, side)}>
                <span className={styles.side}>
                  <span className={styles.who}>{words[side]}</span>
                  {linesIn(conflict)(conflict[side]).map((line) => (
                    <span key={line}>{line}</span>
                  ))}
                </span>
              </Button>
            ))}
          </div>
        </section>
      ))}
      {conflicts.length > 1 ? (
        <div className={styles.sides}>
          <Button onPress={chooseAll("mine")}>{words.allMine}</Button>
          <Button onPress={chooseAll("theirs")}>{words.allTheirs}</Button>
        </div>
      ) : null}
    </Sheet>
  );
}
