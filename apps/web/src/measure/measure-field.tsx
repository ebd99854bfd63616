import { catalogueOf, quantityFaultText } from "@halfturn/words";
import { useState } from "react";
import { FieldError, Input, Label, Text, TextField } from "react-aria-components";
import entry from "../controls/entry.module.css";
import { useSettings } from "../settings/settings-context.js";
import { useWords } from "../words/use-words.js";
import styles from "./measure-field.module.css";
import { measureWords } from "./measure-words.js";
import { type Measure, shownAs } from "./measures.js";
import { type Bounds, type MeasureFault, measureText, readMeasure } from "./read-measure.js";

export interface MeasureFieldProps {
  readonly label: string;
  readonly measure: Measure;
  /** In the unit of the case file; null while there is none. */
  readonly value: number | null;
  /** Called with every text that reads as a value; null when the field is emptied. */
  readonly onChange: (value: number | null) => void;
  readonly bounds?: Bounds;
  readonly help?: string;
  /** The label is read aloud but not drawn, where a heading says it already. */
  readonly hideLabel?: boolean;
}

/** A text as somebody left it, and the value that the case had then. */
interface Draft {
  readonly text: string;
  readonly of: number | null;
  readonly fault: MeasureFault | null;
}

const NO_BOUNDS: Bounds = {};

/**
 * A number with its unit. It reads comma and point, and any unit of its kind; a text that cannot be read stays, with what to do about it, and the case keeps its
 * last good value.
 */
export function MeasureField({ label, measure, value, onChange, bounds = NO_BOUNDS, help, hideLabel = false }: MeasureFieldProps) {
  const { settings } = useSettings();
  const words = useWords(measureWords);
  const [draft, setDraft] = useState<Draft | null>(null);
  const { chip } = shownAs(measure, settings.units);
  const textOf = (shown: number) => measureText(shown, measure, settings.units, words.decimalSign);
  // Once the case has moved on (an undo, another device), what was typed before is out of date.
  const current = draft && Object.is(draft.of, value) ? draft : null;
  const type = (text: string): void => {
    const read = readMeasure(text, measure, settings.units, bounds);
    setDraft({ text, of: read.ok ? read.value : value, fault: read.ok ? null : read.fault });
    if (read.ok && !Object.is(read.value, value)) onChange(read.value);
  };
  const explain = (fault: MeasureFault): string => {
    if (fault.code === "unreadable") return words.remedy(quantityFaultText(catalogueOf(settings.language).correction, fault.fault));
    if (fault.code === "not-whole") return words.notWhole;
    const { minimum, above, maximum, below } = fault.bounds;
    const say = (bound: number | undefined, how: (text: string) => string): readonly string[] =>
      bound === undefined ? [] : [how(`${textOf(bound)} ${chip}`.trim())];
    return words.bounds([
      ...say(minimum, words.atLeast),
      ...say(above, words.above),
      ...say(maximum, words.atMost),
      ...say(below, words.below),
    ]);
  };
  return (
    <TextField
      className={entry.entry ?? ""}
      value={current ? current.text : value === null ? "" : textOf(value)}
      onChange={type}
      onBlur={() => setDraft((left) => (left?.fault ? left : null))}
      isInvalid={Boolean(current?.fault)}
      validationBehavior="aria"
      {...(hideLabel ? { "aria-label": label } : {})}
    >
      {hideLabel ? null : <Label className={entry.label ?? ""}>{label}</Label>}
      <span className={styles.row}>
        <Input className={`${entry.box} ${styles.number}`} inputMode="decimal" autoComplete="off" enterKeyHint="next" />
        {chip === "" ? null : <span className={styles.chip}>{chip}</span>}
      </span>
      {help === undefined ? null : (
        <Text slot="description" className={entry.help ?? ""}>
          {help}
        </Text>
      )}
      <FieldError className={styles.fault ?? ""}>{current?.fault ? explain(current.fault) : ""}</FieldError>
    </TextField>
  );
}
