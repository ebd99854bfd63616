import type { Finding } from "../findings/index.js";
import type { Gauging, Reading } from "./gauging.js";
import { fitLinear, type LinearFit } from "./linear-fit.js";
import { type Observation, observationsOf } from "./observation.js";

/** Below this redundancy number a slip of a degree drowns in the gauge's errors: it would have to exceed some 4 u / sqrt(0.1), or 13 u, of one reading. */
const LEAST_CHECKED = 0.1;

/** A shaft of which some reading has no other to check it. */
export interface UncheckedShaft {
  readonly shaft: string;
  readonly path: string;
  /** The reading that would make a slip visible: a place as a case file spells it, `between:A,B`, or `turn-round`. */
  readonly extra: string;
}

interface Extra {
  readonly name: string;
  readonly add: (gauging: Gauging) => Gauging;
}

/** Readings that tell of a shaft: its own, or where it has none, the differences it was reached by. */
function tellingOf(shaft: string, kept: readonly Observation[]): readonly number[] {
  const where = (holds: (observation: Observation) => boolean): readonly number[] => kept.flatMap((o, k) => (holds(o) ? [k] : []));
  const own = where((o) => o.kind === "absolute" && o.reading.shaft === shaft);
  return own.length > 0 ? own : where((o) => o.kind === "difference" && (o.reading.from === shaft || o.reading.to === shaft));
}

/** Index of the least checked reading of a shaft, where it is not checked enough. */
function weakestOf(shaft: string, kept: readonly Observation[], { residualMaker }: LinearFit): number | null {
  const redundancy = (k: number): number => residualMaker[k]?.[k] ?? 0;
  const telling = tellingOf(shaft, kept);
  const weakest = telling.reduce<number | null>((least, k) => (least === null || redundancy(k) < redundancy(least) ? k : least), null);
  return weakest !== null && redundancy(weakest) < LEAST_CHECKED ? weakest : null;
}

/** A reading to add, with the side of those that are there; its value plays no part. */
function withReading(reading: Pick<Reading, "kind"> & Partial<Reading>): (gauging: Gauging) => Gauging {
  return (gauging) => {
    const zeroSign = gauging.readings[0]?.zeroSign ?? 1;
    const added = { inclination: 0, zeroSign, path: "", ...reading } as Reading;
    return { ...gauging, readings: [...gauging.readings, added] };
  };
}

const turnRound: Extra = {
  name: "turn-round",
  add: (gauging) => {
    const reading = { value: gauging.gauge.resolution, path: "" };
    return { ...gauging, gauge: { ...gauging.gauge, zeroCheck: [...gauging.gauge.zeroCheck, reading, reading] } };
  },
};

/** Extra readings in the order in which they are least work. */
function extrasFor(shaft: string, kept: readonly Observation[], shafts: readonly string[]): readonly Extra[] {
  const places = kept.flatMap((o) => (o.kind === "absolute" && o.reading.shaft === shaft ? [o.reading.place] : []));
  const isSection = shaft !== "source" && shaft !== "driven";
  const ends = isSection ? (["driven-end", "source-end"] as const).filter((place) => !places.includes(place)) : [];
  const own = isSection ? ends.map((place) => ({ name: `${shaft}:${place}`, add: withReading({ kind: "absolute", shaft, place }) })) : [];
  const unread = isSection || places.length > 0 ? [] : [{ name: shaft, add: withReading({ kind: "absolute", shaft, place: "along" }) }];
  const index = shafts.indexOf(shaft);
  const between = [index - 1, index].flatMap((k): readonly Extra[] => {
    const [from, to] = [shafts[k], shafts[k + 1]];
    return from && to ? [{ name: `between:${from},${to}`, add: withReading({ kind: "difference", from, to }) }] : [];
  });
  return [...own, ...unread, ...between, turnRound];
}

/** The extra reading that makes a slip of this shaft visible; the first of them where none does alone. */
function extraFor(shaft: string, gauging: Gauging, kept: readonly Observation[], shafts: readonly string[]): string {
  const extras = extrasFor(shaft, kept, shafts);
  const keptPaths = new Set(kept.map(({ path }) => path));
  const helps = ({ add }: Extra): boolean => {
    const readings = gauging.readings.filter(({ path }) => keptPaths.has(path));
    const zeroCheck = gauging.gauge.zeroCheck.filter(({ path }) => keptPaths.has(path));
    const better = observationsOf(add({ ...gauging, readings, gauge: { ...gauging.gauge, zeroCheck } }), shafts);
    return weakestOf(shaft, better, fitLinear(better)) === null;
  };
  return (extras.find(helps) ?? extras[0] ?? turnRound).name;
}

/** The shafts of which a slip could not be seen from the readings kept, and what to read to see it. kept: at least one observation. */
export function uncheckedShafts(kept: readonly Observation[], gauging: Gauging, shafts: readonly string[]): readonly UncheckedShaft[] {
  const fit = fitLinear(kept);
  return shafts.flatMap((shaft) => {
    const weakest = weakestOf(shaft, kept, fit);
    const path = weakest === null ? undefined : kept[weakest]?.path;
    return path === undefined ? [] : [{ shaft, path, extra: extraFor(shaft, gauging, kept, shafts) }];
  });
}

/** The note on a shaft of which a slip could not be seen; params: `shaft`, and the `extra` reading to take. */
export const noCheckFinding = ({ shaft, path, extra }: UncheckedShaft): Finding => ({
  code: "gauging.no-check-reading",
  severity: "note",
  path,
  params: { shaft, extra },
});
