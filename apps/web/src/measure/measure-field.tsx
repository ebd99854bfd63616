import { catalogueOf } from "@halfturn/words";
import { FieldError, Input, Label, Text, TextField } from "react-aria-components";
import entry from "../controls/entry.module.css";
import { useSettings } from "../settings/settings-context.js";
import { useWords } from "../words/use-words.js";
import { LeftDraft } from "./left-draft.js";
import { measureFaultText } from "./measure-fault-text.js";
import styles from "./measure-field.module.css";
import { measureWords } from "./measure-words.js";
import { type Measure, shownAs } from "./measures.js";
import { type Bounds, measureText } from "./read-measure.js";
import { useMeasureText } from "./use-measure-text.js";

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
  /** Its own name among the fields around it: a text that cannot be read then outlasts a change of page and a reload. */
  readonly part?: string;
}

const NO_BOUNDS: Bounds = {};

/**
 * A number with its unit. It reads comma and point, and any unit of its kind; a text that cannot be read stays, with what to do about it, and the case keeps its
 * last good value.
 */
export function MeasureField(props: MeasureFieldProps) {
  const { label, measure, value, onChange, bounds = NO_BOUNDS, help, hideLabel = false, part } = props;
  const { settings } = useSettings();
  const words = useWords(measureWords);
  const { text, fault, beside, type, blur, useBeside, forgetBeside } = useMeasureText({ part, measure, value, bounds, onChange });
  const { chip } = shownAs(measure, settings.units);
  const textOf = (shown: number): string => measureText(shown, measure, settings.units, words.decimalSign);
  const explain = (): string =>
    fault
      ? measureFaultText(fault, words, catalogueOf(settings.language), label, (amount) =>
          `${textOf(amount)}${chip === "°" ? "" : " "}${chip}`.trim(),
        )
      : "";
  return (
    <TextField
      className={entry.entry ?? ""}
      value={text ?? (value === null ? "" : textOf(value))}
      onChange={type}
      onBlur={blur}
      isInvalid={fault !== null}
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
      <FieldError className={styles.fault ?? ""}>{explain()}</FieldError>
      {beside ? <LeftDraft text={beside.text} onUse={useBeside} onForget={forgetBeside} /> : null}
    </TextField>
  );
}
