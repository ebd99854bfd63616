import type { Finding, FindingParams } from "@halfturn/engine/findings";
import type { Catalogue } from "./catalogue.js";
import type { Numbers } from "./numbers/numbers.js";

/** What to call a shaft, section or joint of the case: its label, or its id where it has none. */
export type NameOf = (id: string) => string;

/** Reads the data of a finding for a sentence. A missing number reads as an ellipsis, so that a sentence never breaks off in an error. */
export interface FindingReader {
  readonly numbers: Numbers;
  readonly params: FindingParams;
  readonly path: string;
  readonly has: (key: string) => boolean;
  readonly number: (key: string) => number | null;
  readonly text: (key: string) => string;
  /** The label of the thing whose id stands under the key. */
  readonly name: (key: string) => string;
  /** Labels of the ids under the first of the keys that is there: a list or a single id. */
  readonly names: (...keys: readonly string[]) => readonly string[];
  /** As a display shows it. */
  readonly gauged: (key: string) => string;
  readonly angle: (key: string) => string;
  readonly acceleration: (key: string) => string;
  readonly speed: (key: string) => string;
}

const UNKNOWN = "…";

export function findingReader(finding: Pick<Finding, "params" | "path">, numbers: Numbers, nameOf: NameOf): FindingReader {
  const { params, path } = finding;
  const number = (key: string): number | null => {
    const value = params[key];
    return typeof value === "number" ? value : null;
  };
  const format = (key: string, by: (value: number) => string): string => {
    const value = number(key);
    return value === null ? UNKNOWN : by(value);
  };
  const text = (key: string): string => (params[key] === undefined ? UNKNOWN : String(params[key]));
  return {
    numbers,
    params,
    path,
    has: (key) => params[key] !== undefined,
    number,
    text,
    name: (key) => (params[key] === undefined ? UNKNOWN : nameOf(text(key))),
    names: (...keys) => {
      const value = keys.map((key) => params[key]).find((candidate) => candidate !== undefined);
      if (value === undefined) return [UNKNOWN];
      return (Array.isArray(value) ? (value as readonly string[]) : [String(value)]).map(nameOf);
    },
    gauged: (key) => format(key, numbers.gaugedAngle),
    angle: (key) => format(key, numbers.angle),
    acceleration: (key) => format(key, numbers.acceleration),
    speed: (key) => format(key, numbers.speed),
  };
}

/** A finding in words. */
export interface FindingText {
  readonly title: string;
  readonly says: string;
  readonly doNext: string;
}

/** Says a finding in a language; `nameOf` turns ids into the labels of the case. */
export function findingText(catalogue: Catalogue, finding: Finding, nameOf: NameOf = (id) => id): FindingText {
  const named: NameOf = (id) => {
    const label = nameOf(id);
    if (label !== id) return label;
    if (id === "source") return catalogue.labels.source;
    return id === "driven" ? catalogue.labels.driven : id;
  };
  const words = catalogue.findings[finding.code];
  const reader = findingReader(finding, catalogue.numbers, named);
  return { title: words.title, says: words.says(reader), doNext: words.doNext(reader) };
}
