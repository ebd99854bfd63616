import type { Case, CaseDriveline } from "@halfturn/casefile";
import type { Catalogue } from "./catalogue.js";
import type { NameOf } from "./name-of.js";
import { placeName } from "./place-name.js";

/** What the driveline at an index is called. */
export const drivelineName = (document: Pick<Case, "drivelines">, index: number, catalogue: Catalogue): string =>
  nameOfDriveline(document.drivelines[index] as CaseDriveline, catalogue);

export const nameOfDriveline = ({ id, label }: Pick<CaseDriveline, "id" | "label">, { labels }: Catalogue): string =>
  label ?? `${labels.driveline} ${idWord(id, labels.drivelineIds)}`;

const idWord = (id: string, words: Readonly<Record<string, string>>): string => (Object.hasOwn(words, id) ? (words[id] ?? id) : id);

/** Names of the shafts and joints of one driveline, by id, and of every place of the case, by path; what has no name stands for itself. */
export function namesOf(document: Case, index: number, catalogue: Catalogue): NameOf {
  const driveline = document.drivelines[index];
  const parts = driveline ? partNames(driveline, catalogue) : new Map<string, string>();
  // No id holds a bracket, so a path is never taken for one.
  return (key) => parts.get(key) ?? pathName(document, key, catalogue) ?? key;
}

function partNames(driveline: CaseDriveline, { labels }: Catalogue): ReadonlyMap<string, string> {
  const names = new Map<string, string>([
    ["source", driveline.source?.label ?? labels.source],
    ["driven", driveline.driven?.label ?? labels.driven],
  ]);
  for (const { id, label } of driveline.sections) names.set(id, label ?? `${labels.section} ${idWord(id, labels.sectionIds)}`);
  for (const { id, label } of driveline.joints) if (label !== undefined) names.set(id, `${id} ${label}`);
  return names;
}

function pathName(document: Case, path: string, catalogue: Catalogue): string | null {
  if (!path.includes("[")) return null;
  const index = drivelineOfPath(document, path);
  const driveline = document.drivelines[index];
  if (!driveline) return null;
  const names = partNames(driveline, catalogue);
  const nameOf: NameOf = (id) => names.get(id) ?? id;
  const [, list, item] = /^drivelines\[\d+\](?:\.(sections|joints)\[(\d+)\])?$/.exec(path) ?? [];
  const part = list === "sections" || list === "joints" ? driveline[list][Number(item)] : undefined;
  if (part) return nameOf(part.id);
  return /^drivelines\[\d+\]$/.test(path) ? drivelineName(document, index, catalogue) : placeName(document, path, nameOf, catalogue);
}

/** The driveline that a place in the case file speaks of; the first where the place names none. */
export function drivelineOfPath(document: Case, path: string): number {
  const direct = /^drivelines\[(\d+)\]/.exec(path)?.[1];
  if (direct !== undefined) return Number(direct);
  const gauging = /^gauging\[(\d+)\]/.exec(path)?.[1];
  const id = gauging === undefined ? undefined : document.gauging?.[Number(gauging)]?.driveline;
  return Math.max(
    0,
    document.drivelines.findIndex((driveline) => driveline.id === id),
  );
}
