import { useEffect } from "react";
import { Fields } from "../controls/fields.js";
import { hasKeys, useKeptDraft } from "../device/kept-draft.js";
import { useSettings } from "../settings/settings-context.js";
import { useWords } from "../words/use-words.js";
import { LeftDraft } from "./left-draft.js";
import { MeasureField } from "./measure-field.js";
import styles from "./measure-field.module.css";
import { measureWords } from "./measure-words.js";
import { type Measure, shownAs } from "./measures.js";
import { type Bounds, measureText } from "./read-measure.js";

export interface TogetherField<Key extends string> {
  readonly key: Key;
  readonly label: string;
  readonly measure: Measure;
  /** Also by what the others are. */
  readonly bounds: Bounds | ((others: { readonly [K in Key]?: number }) => Bounds);
  readonly help?: string;
}

export interface TogetherFieldsProps<Key extends string> {
  /** Its own name among the fields around it. */
  readonly part: string;
  readonly fields: readonly TogetherField<Key>[];
  /** null while they are not all there. */
  readonly value: { readonly [K in Key]: number } | null;
  readonly onChange: (value: { readonly [K in Key]: number } | null) => void;
}

type Numbers = Readonly<Record<string, number>>;

/** Some of the numbers, and what the case had before they were typed. */
interface Partly {
  readonly numbers: Numbers;
  readonly was: Numbers | null;
  /** What the group said besides: it goes back into the case with the numbers. */
  readonly rest: Readonly<Record<string, unknown>>;
}

const isNumbers = (value: unknown): value is Numbers =>
  typeof value === "object" && value !== null && Object.values(value).every((one) => typeof one === "number");

const isPartly = (value: unknown): value is Partly =>
  hasKeys(value, "numbers", "was", "rest") &&
  isNumbers(value.numbers) &&
  (value.was === null || isNumbers(value.was)) &&
  typeof value.rest === "object" &&
  value.rest !== null;

/** Numbers that only say something together: they go into the case once all of them are there, and none is made up for the others. */
export function TogetherFields<Key extends string>({ part, fields, value, onChange }: TogetherFieldsProps<Key>) {
  const { settings } = useSettings();
  const words = useWords(measureWords);
  const [partly, keepPartly] = useKeptDraft(part, isPartly);
  // The group may have other keys, which are not asked about here.
  const inCase: Numbers | null = value && Object.fromEntries(fields.map(({ key }) => [key, value[key]]));
  const shown: Numbers = inCase ?? partly?.numbers ?? {};
  const isSame = (one: Numbers | null, other: Numbers): boolean => one !== null && fields.every(({ key }) => one[key] === other[key]);
  // Taking the numbers apart was undone: what was typed went with it.
  const isUndone = inCase !== null && partly !== null && isSame(partly.was, inCase);
  // biome-ignore lint/correctness/useExhaustiveDependencies: keeping is a new function each time, and always of these fields
  useEffect(() => {
    if (isUndone) keepPartly(null);
  }, [isUndone]);
  const put = (next: Numbers, was: Numbers | null): void => {
    if (fields.every(({ key }) => next[key] !== undefined)) {
      keepPartly(null);
      onChange({ ...partly?.rest, ...next } as { readonly [K in Key]: number });
      return;
    }
    const asked: readonly string[] = fields.map(({ key }) => key);
    const rest = value ? Object.fromEntries(Object.entries(value).filter(([key]) => !asked.includes(key))) : (partly?.rest ?? {});
    keepPartly(Object.keys(next).length === 0 ? null : { numbers: next, was, rest });
    if (inCase) onChange(null);
  };
  const change = (key: Key, amount: number | null): void => {
    const { [key]: _, ...others } = shown;
    put(amount === null ? others : { ...others, [key]: amount }, inCase ?? partly?.was ?? null);
  };
  const say = ({ key, label, measure }: TogetherField<Key>): readonly string[] => {
    const number = partly?.numbers[key];
    const text = number === undefined ? "" : measureText(number, measure, settings.units, words.decimalSign);
    return text === "" ? [] : [`${label} ${text} ${shownAs(measure, settings.units).chip}`.trim()];
  };
  return (
    <>
      <Fields>
        {fields.map(({ key, bounds, ...field }) => (
          <MeasureField
            key={key}
            part={`${part}.${key}`}
            {...field}
            bounds={typeof bounds === "function" ? bounds(shown as { readonly [K in Key]?: number }) : bounds}
            value={shown[key] ?? null}
            onChange={(amount) => change(key, amount)}
          />
        ))}
      </Fields>
      {partly && inCase === null ? (
        <p className={styles.together} role="status">
          {words.together}
        </p>
      ) : null}
      {partly && inCase && !isUndone ? (
        <LeftDraft
          text={fields.flatMap(say).join(", ")}
          onUse={() => put({ ...inCase, ...partly.numbers }, inCase)}
          onForget={() => keepPartly(null)}
        />
      ) : null}
    </>
  );
}
