import { itemKeys } from "./item-keys.js";
import { own, same } from "./same.js";

/** The way to a value: keys of objects, and items of lists by what they are, so that it holds however the lists are ordered. */
export type Place = readonly PlaceStep[];
export type PlaceStep = { readonly key: string } | ItemStep;
export interface ItemStep {
  readonly item: string;
  /** Where items are taken whole: the one that reads so. Two alike are told apart by what they say, not by their number. */
  readonly like?: unknown;
}

type Plain = Readonly<Record<string, unknown>>;

/** The document with another value in a place; undefined takes out what stands there. A place that is not there is made, but for lists in between that hold no such item. */
export const withValue = (document: unknown, place: Place, value: unknown): unknown => put(document, "", place, value);

function put(here: unknown, name: string, place: Place, value: unknown): unknown {
  const [step, ...rest] = place;
  if (!step) return value;
  if ("item" in step) return putItem(Array.isArray(here) ? here : [], name, step, rest, value);
  const object: Plain = typeof here === "object" && here !== null && !Array.isArray(here) ? (here as Plain) : {};
  const next = put(own(object, step.key), step.key, rest, value);
  if (next !== undefined) return { ...object, [step.key]: next };
  const { [step.key]: _, ...others } = object;
  return others;
}

const indexOf = (list: readonly unknown[], name: string, { item, like }: ItemStep): number =>
  like === undefined ? itemKeys(name, list).indexOf(item) : list.findIndex((candidate) => same(candidate, like));

function putItem(list: readonly unknown[], name: string, step: ItemStep, rest: Place, value: unknown): readonly unknown[] {
  const index = indexOf(list, name, step);
  if (index >= 0) {
    const next = put(list[index], "", rest, value);
    return next === undefined ? list.toSpliced(index, 1) : list.with(index, next);
  }
  return rest.length > 0 || value === undefined ? list : [...list, value];
}

/** A place as the case file spells it: `gauging[0].readings[2]`; an item that is not there is spelled without a number. */
export function placeText(document: unknown, place: Place): string {
  let here = document;
  let name = "";
  let text = "";
  for (const step of place) {
    if ("item" in step) {
      const list: readonly unknown[] = Array.isArray(here) ? here : [];
      const index = indexOf(list, name, step);
      text += index < 0 ? "[]" : `[${index}]`;
      here = index < 0 ? undefined : list[index];
    } else {
      name = step.key;
      text += text === "" ? step.key : `.${step.key}`;
      here = typeof here === "object" && here !== null ? own(here as Plain, step.key) : undefined;
    }
  }
  return text;
}
