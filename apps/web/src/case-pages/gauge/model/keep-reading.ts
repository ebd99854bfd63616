import {
  type Case,
  type CaseGauge,
  type CaseGauging,
  type CaseHeading,
  type CaseReading,
  placeOnShaft,
  type VehicleSide,
} from "@halfturn/casefile";
import type { ShaftEnd } from "./ends.js";
import type { ReadingStep } from "./step.js";

/** One reading as it was taken. */
export interface TakenReading {
  readonly deg: number;
  /** The lower end; on a face, the end that its top leans toward. Null only at 0. */
  readonly lower: ShaftEnd | null;
  readonly side: VehicleSide;
  readonly isFace: boolean;
}

/** A reading as the case spells it; notes and foreign keys of the one that it replaces stay. */
export function readingOf(step: ReadingStep, taken: TakenReading, replaced: CaseReading | null = null): CaseReading {
  const { deg, lower, side, isFace } = taken;
  const noted = deg === 0 || lower === null ? null : lower;
  const kept = replaced === null ? {} : keptKeys(replaced);
  const word = noted === null ? {} : { lower: noted };
  if (step.kind === "pair") return { ...kept, between: [step.from, step.to], deg, ...word, side };
  if (isFace) return { ...kept, at: step.at, face: "square", deg, ...(noted === null ? {} : { topLeans: noted }), side };
  return { ...kept, at: step.at, deg, ...word, side };
}

const OWN_KEYS = ["at", "between", "face", "deg", "lower", "topLeans", "side"];
const keptKeys = (reading: CaseReading): object => Object.fromEntries(Object.entries(reading).filter(([key]) => !OWN_KEYS.includes(key)));

/** Changes one gauging of a case. */
export const withGauging = (document: Case, index: number, change: (gauging: CaseGauging) => CaseGauging): Case => {
  const gauging = document.gauging?.[index];
  if (!gauging) return document;
  const changed = change(gauging);
  return changed === gauging ? document : { ...document, gauging: (document.gauging ?? []).with(index, changed) };
};

export const withNewGauging = (document: Case, gauging: CaseGauging): Case => ({
  ...document,
  gauging: [...(document.gauging ?? []), gauging],
});

/** Adds a reading, or puts it in the place of another. */
export const keepReading = (gauging: CaseGauging, reading: CaseReading, replaces: number | null): CaseGauging => ({
  ...gauging,
  readings: replaces === null ? [...gauging.readings, reading] : gauging.readings.with(replaces, reading),
});

export const dropReading = (gauging: CaseGauging, index: number): CaseGauging => ({
  ...gauging,
  readings: gauging.readings.toSpliced(index, 1),
});

/** Notes one end of a shaft as the lower one in every reading of it against gravity that is not level. */
export const noteLowerEnd = (gauging: CaseGauging, shaft: string, end: ShaftEnd): CaseGauging => ({
  ...gauging,
  readings: gauging.readings.map((reading) =>
    "at" in reading && placeOnShaft(reading.at).shaft === shaft ? withEnd(reading, end) : reading,
  ),
});

function withEnd(reading: CaseReading, end: ShaftEnd): CaseReading {
  if (reading.deg === 0) return reading;
  return "face" in reading ? { ...reading, topLeans: end } : { ...reading, lower: end };
}

export function noteReading(gauging: CaseGauging, index: number, notes: string): CaseGauging {
  const reading = gauging.readings[index];
  if (!reading || (reading.notes ?? "") === notes) return gauging;
  const { notes: _, ...bare } = reading;
  const noted = (notes === "" ? bare : { ...bare, notes }) as CaseReading;
  return { ...gauging, readings: gauging.readings.with(index, noted) };
}

export const keepHeading = (gauging: CaseGauging, heading: CaseHeading, replaces: number | null): CaseGauging => {
  const headings = gauging.headings ?? [];
  return { ...gauging, headings: replaces === null ? [...headings, heading] : headings.with(replaces, heading) };
};

export const dropHeading = (gauging: CaseGauging, index: number): CaseGauging => ({
  ...gauging,
  headings: (gauging.headings ?? []).toSpliced(index, 1),
});

export const withGauge = (gauging: CaseGauging, gauge: CaseGauge): CaseGauging => ({ ...gauging, gauge });
