import { Fields } from "../../controls/fields.js";
import { MeasureField } from "../../measure/measure-field.js";
import type { Measure } from "../../measure/measures.js";
import type { Bounds } from "../../measure/read-measure.js";
import { type FieldNames, fieldNames } from "../../words/field-names.js";
import { useWords } from "../../words/use-words.js";
import { type FieldHelp, fieldHelp } from "./words/field-help.js";

export interface NumberField<Key extends keyof FieldNames> {
  readonly key: Key;
  readonly measure: Measure;
  readonly bounds: Bounds;
  /** Instead of what stands in the catalogue for its key. */
  readonly help?: string;
}

export interface NumberFieldsProps<Key extends keyof FieldNames> {
  readonly fields: readonly NumberField<Key>[];
  readonly values: { readonly [K in Key]?: number | null };
  readonly onChange: (changes: { readonly [K in Key]?: number | null }) => void;
}

/** Numbers of one part of the case, each by its key: what it is called, where it is measured, and what it may be. */
export function NumberFields<Key extends keyof FieldNames>({ fields, values, onChange }: NumberFieldsProps<Key>) {
  const names = useWords(fieldNames);
  const help = useWords(fieldHelp);
  const helpOf = (key: string) => (Object.hasOwn(help, key) ? help[key as keyof FieldHelp] : undefined);
  return (
    <Fields>
      {fields.map(({ key, measure, bounds, help: own }) => {
        const where = own ?? helpOf(key);
        return (
          <MeasureField
            key={key}
            part={key}
            label={names[key]}
            measure={measure}
            bounds={bounds}
            value={values[key] ?? null}
            onChange={(value) => onChange({ [key]: value } as { readonly [K in Key]?: number | null })}
            {...(where === undefined ? {} : { help: where })}
          />
        );
      })}
    </Fields>
  );
}
