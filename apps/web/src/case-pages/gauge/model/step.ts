import { type CaseDriveline, type CaseGauging, placeOnShaft, placesOf, shaftsOf } from "@halfturn/casefile";

import { notedEnd, type ShaftEnd } from "./ends.js";

/** How readings are taken: each shaft against gravity, one shaft against its neighbour with the gauge zeroed in between, or sideways with a tape. */
export const WAYS = ["places", "pairs", "tape"] as const;
export type Way = (typeof WAYS)[number];

export interface PlaceStep {
  readonly kind: "place";
  readonly key: string;
  /** As the case file spells it. */
  readonly at: string;
  readonly shaft: string;
  readonly place: "along" | "source-end" | "driven-end";
}

export interface PairStep {
  readonly kind: "pair";
  readonly key: string;
  readonly from: string;
  readonly to: string;
}

export interface TapeStep {
  readonly kind: "tape";
  readonly key: string;
  readonly shaft: string;
}

export type GaugeStep = PlaceStep | PairStep | TapeStep;
export type ReadingStep = PlaceStep | PairStep;

/** A section is read at both ends, so that one reading checks the other; as a whole only where a reading stands there already. */
const isVisited = (driveline: CaseDriveline, at: string, gauging: CaseGauging | null): boolean =>
  !driveline.sections.some(({ id }) => id === at) || (gauging?.readings ?? []).some((reading) => "at" in reading && reading.at === at);

const placeStep = (at: string): PlaceStep => ({ kind: "place", key: at, at, ...placeOnShaft(at) });

const pairStep = (from: string, to: string): PairStep => ({ kind: "pair", key: `between:${from},${to}`, from, to });

/** The steps of one way of reading, in power order. */
export function stepsOf(driveline: CaseDriveline, way: Way, gauging: CaseGauging | null): readonly GaugeStep[] {
  const shafts = shaftsOf(driveline);
  if (way === "places") {
    return placesOf(driveline)
      .filter((at) => isVisited(driveline, at, gauging))
      .map(placeStep);
  }
  if (way === "tape") return shafts.map((shaft) => ({ kind: "tape", key: `heading:${shaft}`, shaft }));
  const usual = shafts.slice(1).map((to, k) => pairStep(shafts[k] as string, to));
  const others = (gauging?.readings ?? []).flatMap((reading) => {
    if (!("between" in reading)) return [];
    const [from, to] = reading.between.map((at) => placeOnShaft(at).shaft) as [string, string];
    return usual.some((step) => step.from === from && step.to === to) ? [] : [pairStep(from, to)];
  });
  return [...usual, ...others.filter(({ key }, k) => others.findIndex((other) => other.key === key) === k)];
}

/** Which readings of a gauging were taken at a step; of its headings where the step is one of the tape. */
export function takenAt(step: GaugeStep, gauging: CaseGauging | null): readonly number[] {
  const where = <Item>(items: readonly Item[], holds: (item: Item) => boolean): readonly number[] =>
    items.flatMap((item, k) => (holds(item) ? [k] : []));
  if (step.kind === "tape") return where(gauging?.headings ?? [], ({ of }) => of === step.shaft);
  return where(gauging?.readings ?? [], (reading) => {
    if (step.kind === "place") return "at" in reading && reading.at === step.at;
    if (!("between" in reading)) return false;
    return placeOnShaft(reading.between[0]).shaft === step.from && placeOnShaft(reading.between[1]).shaft === step.to;
  });
}

/** The first step after a place in the list, round its end, at which nothing was taken; null where all were. */
export function nextOpen(steps: readonly GaugeStep[], after: number, gauging: CaseGauging | null): number | null {
  const order = steps.map((_, k) => (after + 1 + k) % steps.length);
  return order.find((k) => takenAt(steps[k] as GaugeStep, gauging).length === 0) ?? null;
}

/** The lower end that an earlier reading of the same place, or else of the same shaft, calls so: likelier the same than that of any other shaft. */
export function endNearby(step: GaugeStep, gauging: CaseGauging): ShaftEnd | null {
  const endOf = (indices: readonly number[]): ShaftEnd | null =>
    indices.reduce<ShaftEnd | null>((last, index) => {
      const reading = gauging.readings[index];
      return (reading && notedEnd(reading)) ?? last;
    }, null);
  if (step.kind === "tape") return null;
  const here = endOf(takenAt(step, gauging));
  if (here !== null || step.kind === "pair") return here;
  return endOf(gauging.readings.flatMap((reading, k) => ("at" in reading && placeOnShaft(reading.at).shaft === step.shaft ? [k] : [])));
}

/** The way and the step at which a reading was taken; null where the driveline knows no such place. */
export function stepOfReading(
  driveline: CaseDriveline,
  gauging: CaseGauging,
  reading: number,
): { readonly way: Way; readonly step: number } | null {
  for (const way of ["places", "pairs"] as const) {
    const step = stepsOf(driveline, way, gauging).findIndex((candidate) => takenAt(candidate, gauging).includes(reading));
    if (step >= 0) return { way, step };
  }
  return null;
}
