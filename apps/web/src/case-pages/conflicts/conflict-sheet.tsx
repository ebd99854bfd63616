import type { CaseDriveline } from "@halfturn/casefile";
import type { MergeConflict } from "@halfturn/exchange";
import { catalogueOf, drivelineOfPath, type NameOf, namesOf } from "@halfturn/words";
import { Button } from "../../controls/button.js";
import { Sheet } from "../../controls/sheet.js";
import type { DeviceCase } from "../../device/device-case.js";
import { useSettings } from "../../settings/settings-context.js";
import { fieldNames } from "../../words/field-names.js";
import { useWords } from "../../words/use-words.js";
import { conflictField } from "./conflict-field.js";
import styles from "./conflict-sheet.module.css";
import { conflictWords } from "./conflict-words.js";
import { valueLines } from "./value-lines.js";
import { numbersByKey, valueNumber } from "./value-number.js";

export interface ConflictSheetProps {
  readonly record: DeviceCase;
  readonly onChoose: (conflict: MergeConflict, side: "mine" | "theirs") => void;
  readonly onClose: () => void;
}

const DRIVELINE = /^drivelines\[\d*\]$/;

/** The key that the last step of a path names. */
const keyOf = (path: string): string => (path.split(".").at(-1) ?? "").replace(/\[[^\]]*\]$/, "");

/** A name with a colon goes before what follows it. */
const inOneLine = (lines: readonly string[]): string => lines.join(", ").replaceAll(":, ", ": ");

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
  /** What parts are called: those of a driveline that is to be chosen by itself, others by the case as it is. */
  const partsIn = (value: unknown, path: string): NameOf => {
    const own = DRIVELINE.test(path) && value !== undefined ? [value as CaseDriveline] : null;
    return own ? namesOf({ ...document, drivelines: own }, 0, catalogue) : namesOf(document, drivelineOfPath(document, path), catalogue);
  };
  /** The lines of a value of a conflict, its numbers told apart from those that it is chosen among. */
  const linesIn = ({ path, base, mine, theirs }: MergeConflict): ((value: unknown) => readonly string[]) => {
    const key = keyOf(path);
    const among = numbersByKey([base, mine, theirs], key);
    const number = (value: number, of: string): string => valueNumber(value, of, numbers, among.get(of));
    return (value) => valueLines(value, { ...say, number, part: partsIn(value, path) }, key);
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
              {words.before}: {inOneLine(linesIn(conflict)(conflict.base))}
            </p>
          )}
          <div className={styles.sides}>
            {(["mine", "theirs"] as const).map((side) => (
              <Button key={side} size="large" onPress={() => onChoose(conflict, side)}>
                <span className={styles.side}>
                  <span className={styles.who}>{words[side]}</span>
                  <span className={styles.lines}>{linesIn(conflict)(conflict[side]).join("\n")}</span>
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
