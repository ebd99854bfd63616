import { useState } from "react";
import { Fields } from "../controls/fields.js";
import { MeasureField } from "./measure-field.js";
import type { Measure } from "./measures.js";
import type { Bounds } from "./read-measure.js";

export interface TogetherField<Key extends string> {
  readonly key: Key;
  readonly label: string;
  readonly measure: Measure;
  readonly bounds: Bounds;
}

export interface TogetherFieldsProps<Key extends string> {
  readonly fields: readonly TogetherField<Key>[];
  /** null while they are not all there. */
  readonly value: { readonly [K in Key]: number } | null;
  readonly onChange: (value: { readonly [K in Key]: number } | null) => void;
}

type Partly<Key extends string> = { readonly [K in Key]?: number };

/** Numbers that only say something together: they go into the case once all of them are there, and none is made up for the others. */
export function TogetherFields<Key extends string>({ fields, value, onChange }: TogetherFieldsProps<Key>) {
  const [partly, setPartly] = useState<Partly<Key>>({});
  const shown: Partly<Key> = value ?? partly;
  const change = (key: Key, amount: number | null): void => {
    const { [key]: _, ...others } = shown;
    const next = (amount === null ? others : { ...others, [key]: amount }) as Partly<Key>;
    setPartly(next);
    if (fields.every((field) => next[field.key] !== undefined)) onChange(next as { readonly [K in Key]: number });
    else if (value) onChange(null);
  };
  return (
    <Fields>
      {fields.map(({ key, ...field }) => (
        <MeasureField key={key} {...field} value={shown[key] ?? null} onChange={(amount) => change(key, amount)} />
      ))}
    </Fields>
  );
}
