import type { Case, CaseGauging, CaseReading } from "@halfturn/casefile";

/** The case gauged once more after its last correction, every shaft found where it was foretold, read to a tenth of a degree. */
export function gaugedAfter(document: Case): Case {
  const correction = document.corrections?.at(-1);
  const [basis] = correction?.basis ?? [];
  const before = basis === undefined ? undefined : document.gauging?.[basis.gauging];
  const foretold = correction?.predicted[0]?.drivelines.find(({ driveline }) => driveline === basis?.driveline)?.shafts;
  if (!before || !foretold) throw new Error("the case has no correction to be gauged after");
  const inclinationOf = (shaft: string): number => {
    const found = foretold.find(({ id }) => id === shaft)?.inclinationDeg?.value;
    if (found === undefined) throw new Error(`nothing was foretold of ${shaft}`);
    return found;
  };
  const readings = before.readings.flatMap((reading): readonly CaseReading[] => {
    if (!("at" in reading)) return [];
    const inclination = inclinationOf(reading.at.split(":")[0] ?? "");
    const lower = inclination >= 0 ? "driven-end" : "source-end";
    const deg = Math.round(Math.abs(inclination) * 10) / 10;
    return ["topLeans" in reading ? { ...reading, deg, topLeans: lower } : { ...reading, deg, lower }];
  });
  const after: CaseGauging = { ...before, stage: "after", takenAt: "2026-05-04T10:00:00Z", readings };
  return { ...document, gauging: [...(document.gauging ?? []), after] };
}
