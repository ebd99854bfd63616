import { fitLinear, fuseGauging, observationsOf } from "@halfturn/engine/gauging";
import { uniformDeviates } from "@halfturn/engine/uncertainty";
import type { Layout } from "./layouts.js";
import { drawTruth, drivelineOf, gaugingOf, perfectPlacing, readSpot, realPlacing } from "./simulate-gauging.js";
import { drawVictims, readWithSlip, type SlipName, truthFor } from "./slips.js";

/** A slip counts where it shifts some contrast of the readings by more than this many of its standard uncertainties. */
const VISIBLE_SHIFT = 4;

const CONTRADICTIONS: readonly string[] = [
  "gauging.tube-ends-disagree",
  "gauging.repeats-disagree",
  "gauging.difference-disagrees",
  "gauging.sides-disagree",
  "gauging.zero-check-disagrees",
];

/** What came of one gauging. */
interface Outcome {
  readonly alarm: boolean;
  readonly stopped: boolean;
  readonly setAside: readonly string[];
}

export interface Tally {
  readonly drawn: number;
  /** Slips that the readings can betray at all. */
  readonly visible: number;
  readonly caught: number;
  /** Caught, and only readings touched by the slip were set aside. */
  readonly settledRightly: number;
  /** Caught, and a sound reading was set aside without a stop. */
  readonly settledWrongly: number;
  /** Caught, and left to a person by a stop. */
  readonly stopped: number;
}

const NONE: Tally = { drawn: 0, visible: 0, caught: 0, settledRightly: 0, settledWrongly: 0, stopped: 0 };

export const addTallies = (a: Tally, b: Tally): Tally => ({
  drawn: a.drawn + b.drawn,
  visible: a.visible + b.visible,
  caught: a.caught + b.caught,
  settledRightly: a.settledRightly + b.settledRightly,
  settledWrongly: a.settledWrongly + b.settledWrongly,
  stopped: a.stopped + b.stopped,
});

export const totalOf = (tallies: readonly Tally[]): Tally => tallies.reduce(addTallies, NONE);

function outcomeOf(layout: Layout, gauging: ReturnType<typeof gaugingOf>): Outcome {
  const { findings } = fuseGauging(gauging, drivelineOf(layout));
  const contradictions = findings.filter(({ code, severity }) => CONTRADICTIONS.includes(code) && severity !== "note");
  return {
    alarm: contradictions.length > 0,
    stopped: contradictions.some(({ severity }) => severity === "stop"),
    setAside: findings.filter(({ code }) => code === "gauging.reading-set-aside").map(({ path }) => path),
  };
}

/** Share of clean gaugings in which a contradiction of severity warn or stop is reported. */
export function falseAlarms(layout: Layout, sets: number, seed: number): number {
  const uniform = uniformDeviates(seed);
  const placing = realPlacing(layout, uniform);
  let alarms = 0;
  for (let k = 0; k < sets; k++) {
    const truth = drawTruth(layout, uniform);
    const values = layout.spots.map((spot) => readSpot(spot, truth, placing));
    if (outcomeOf(layout, gaugingOf(layout, values, truth, placing, uniform)).alarm) alarms++;
  }
  return alarms / sets;
}

/** Draws slips of one kind and looks at what becomes of those that the readings can betray. */
export function slipTally(slip: SlipName, layout: Layout, sets: number, seed: number): Tally {
  const uniform = uniformDeviates(seed);
  const placing = realPlacing(layout, uniform);
  let tally = NONE;
  for (let k = 0; k < sets; k++) tally = addTallies(tally, oneSlip(slip, layout, placing, uniform));
  return tally;
}

function oneSlip(
  slip: SlipName,
  layout: Layout,
  placing: ReturnType<typeof realPlacing>,
  uniform: ReturnType<typeof uniformDeviates>,
): Tally {
  const victims = drawVictims(slip, layout, uniform);
  if (!victims) return NONE;
  const truth = truthFor(slip, drawTruth(layout, uniform));
  const sign = uniform() < 0.5 ? -1 : 1;
  const drawn = { ...NONE, drawn: 1 };
  if (shiftOf(slip, layout, victims, truth, sign) <= VISIBLE_SHIFT) return drawn;
  const values = readWithSlip(slip, layout, victims, truth, placing, sign);
  const { alarm, stopped, setAside } = outcomeOf(layout, gaugingOf(layout, values, truth, placing, uniform));
  const touched = victims.map((k) => `gauging[0].readings[${k}]`);
  const wrongly = setAside.some((path) => !touched.includes(path));
  const settled = alarm && !stopped;
  return {
    ...drawn,
    visible: 1,
    caught: alarm ? 1 : 0,
    settledRightly: settled && !wrongly ? 1 : 0,
    settledWrongly: settled && wrongly ? 1 : 0,
    stopped: stopped ? 1 : 0,
  };
}

/** The largest shift of any contrast of the readings by the slip alone, in standard uncertainties of that contrast: sqrt(d . R d), d = shift / u. */
function shiftOf(slip: SlipName, layout: Layout, victims: readonly number[], truth: Parameters<typeof readSpot>[1], sign: number): number {
  const clean = layout.spots.map((spot) => readSpot(spot, truth, perfectPlacing));
  const wrong = readWithSlip(slip, layout, victims, truth, perfectPlacing, sign);
  const observations = observationsOf(
    gaugingOf(layout, clean, truth, perfectPlacing, () => 0.5),
    layout.shafts,
  );
  const { residualMaker } = fitLinear(observations);
  const shift = observations.map(({ u }, k) => ((wrong[k] ?? 0) - (clean[k] ?? 0)) / u);
  const left = residualMaker.map((row) => row.reduce((sum, entry, j) => sum + entry * (shift[j] ?? 0), 0));
  return Math.sqrt(
    Math.max(
      0,
      left.reduce((sum, value, k) => sum + value * (shift[k] ?? 0), 0),
    ),
  );
}
