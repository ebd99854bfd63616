import type { Case, CaseDriveline } from "@halfturn/casefile";
import type { Catalogue, NameOf } from "@halfturn/words";

/** What the driveline at an index is called. */
export function drivelineName(document: Case, index: number, { labels }: Catalogue): string {
  const driveline = document.drivelines[index] as CaseDriveline;
  return driveline.label ?? `${labels.driveline} ${driveline.id}`;
}

/** Labels of the shafts and joints of one driveline; an id without a label stands for itself. */
export function namesOf(document: Case, index: number, { labels }: Catalogue): NameOf {
  const driveline = document.drivelines[index];
  if (!driveline) return (id) => id;
  const names = new Map<string, string>([
    ["source", driveline.source?.label ?? labels.source],
    ["driven", driveline.driven?.label ?? labels.driven],
  ]);
  for (const { id, label } of driveline.sections) names.set(id, label ?? `${labels.section} ${id}`);
  for (const { id, label } of driveline.joints) if (label !== undefined) names.set(id, `${id} ${label}`);
  return (id) => names.get(id) ?? id;
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
