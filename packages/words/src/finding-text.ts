import type { Finding, FindingParams } from "@halfturn/engine/findings";
import type { Catalogue } from "./catalogue.js";
import type { FindingReader } from "./finding-reader.js";
import type { NameOf } from "./name-of.js";

const UNKNOWN = "…";
/** The engine names the likeliest first; a longer list would not be read under a vehicle. */
const MOST_CAUSES = 3;
/** Below half of the last digit of any display. */
const LEVEL_DEG = 0.005;

export function findingReader({ params, path }: Pick<Finding, "params" | "path">, catalogue: Catalogue, nameOf: NameOf): FindingReader {
  const { numbers, labels, phrases } = catalogue;
  const text = (key: string): string => (params[key] === undefined ? UNKNOWN : String(params[key]));
  const format = (key: string, by: (value: number) => string): string => {
    const value = params[key];
    return typeof value === "number" ? by(value) : UNKNOWN;
  };
  const list = (key: string): readonly string[] => listOf(params, key);
  const likelier = typeof params.likelier === "string" ? params.likelier : null;
  const causes = list("causes").flatMap((cause) =>
    Object.hasOwn(phrases.causes, cause) ? [phrases.causes[cause as keyof typeof phrases.causes]] : [],
  );
  return {
    numbers,
    has: (key) => params[key] !== undefined,
    text,
    list,
    name: (key) => (params[key] === undefined ? UNKNOWN : nameOf(text(key))),
    place: nameOf(path),
    names: (key) => list(key).map(nameOf),
    gauged: (key) => format(key, (value) => numbers.gaugedAngle(Math.abs(value))),
    lean: (key) =>
      format(key, (value) => {
        if (Math.abs(value) < LEVEL_DEG) return `${numbers.gaugedAngle(0)} (${labels.level})`;
        return `${numbers.gaugedAngle(Math.abs(value))} (${value > 0 ? labels.drivenEndLower : labels.sourceEndLower})`;
      }),
    angle: (key) => format(key, numbers.angle),
    phasing: (key) => format(key, (value) => `${numbers.plain(value, 0)}°`),
    acceleration: (key) => format(key, numbers.acceleration),
    speed: (key) => format(key, numbers.speed),
    roadSpeed: (key) => format(key, (kmh) => numbers.roadSpeed(kmh, 0)),
    bareRoadSpeed: (key) => format(key, (kmh) => numbers.bareRoadSpeed(kmh, 0)),
    amount: (key, decimals) => format(key, (value) => numbers.plain(value, decimals)),
    order: (partKey, orderKey) => format(orderKey, (order) => catalogue.orders.orderOf(text(partKey), order, nameOf)),
    share: (key) => format(key, numbers.share),
    signedShare: (key) => format(key, (value) => `${value > 0 ? "+" : ""}${numbers.plain(value * 100, 1)}\u00a0%`),
    repeat:
      params.repeat === undefined ? null : phrases.repeat({ of: text("repeat"), path: text("repeatPath"), share: shareOf(params) }, nameOf),
    readPlace: (key) => phrases.readPlace(text(key), nameOf),
    doubt: phrases.doubt(likelier === null ? null : nameOf(likelier), list("readings").map(nameOf), causes.slice(0, MOST_CAUSES)),
  };
}

const shareOf = (params: FindingParams): number => (typeof params.repeatShare === "number" ? params.repeatShare : 0);

function listOf(params: FindingParams, key: string): readonly string[] {
  const value = params[key];
  if (value === undefined) return [];
  return Array.isArray(value) ? (value as readonly string[]) : [String(value)];
}

/** A finding in words. */
export interface FindingText {
  readonly title: string;
  readonly says: string;
  readonly doNext: string;
}

/** Says a finding in a language; `nameOf` turns ids and places into the names of the case. */
export function findingText(catalogue: Catalogue, finding: Finding, nameOf: NameOf = (id) => id): FindingText {
  const named: NameOf = (id) => {
    const label = nameOf(id);
    if (label !== id) return label;
    if (id === "source") return catalogue.labels.source;
    return id === "driven" ? catalogue.labels.driven : id;
  };
  const words = catalogue.findings[finding.code];
  const reader = findingReader(finding, catalogue, named);
  return { title: words.title, says: words.says(reader), doNext: words.doNext(reader) };
}
