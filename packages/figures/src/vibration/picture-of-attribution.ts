import type { Case } from "@halfturn/casefile";
import type { Attribution, AttributionInput, Contribution } from "@halfturn/engine/attribution";
import { type OrderMap, orderMapSteps, type SignalResult } from "@halfturn/engine/signal";
import type { CommonPart } from "@halfturn/words";
import type { FigureLabels } from "../figure-labels.js";
import type { FoldedMark, PicturedQuantity, VibrationPicture } from "./vibration-picture.js";

/** What was attributed, and how. */
export interface AttributedRecording {
  readonly attribution: Attribution;
  readonly input: AttributionInput;
  /** Names of the channels, as they went in. */
  readonly names: readonly string[];
  /** What each of them measures. To the engine every pressure and every share of a full scale is a sound. */
  readonly quantities: readonly PicturedQuantity[];
}

/** Finest first: so many turns of the propeller shaft are seen at once; a short recording gets a coarser picture. */
const TURNS = [32, 16, 8];
const [ROWS, COLUMNS] = [48, 96];
/** Below this order of the shaft lie a sensor's offset and its drift. */
const LEAST_ORDER = 0.15;
/** More lines than this hide the map; those that explain least are left out. */
const MOST_MARKS = 12;

/** Makes the picture of an attributed recording, over orders of the propeller shaft; yields the share done. Faults as orderMapSteps. */
export function* vibrationPictureSteps(
  { attribution, input, names, quantities }: AttributedRecording,
  document: Case,
  labels: FigureLabels,
): Generator<number, SignalResult<VibrationPicture>> {
  const channel = input.channels[attribution.strongest] as AttributionInput["channels"][number];
  const perShaftTurn = turnsPerShaftTurn(input) * (attribution.readings[0]?.scale ?? 1);
  const speeds = attribution.blocks.map(({ turnsPerSecond }) => turnsPerSecond * perShaftTurn);
  const seen = Math.min(...speeds.map((speed) => attribution.band / speed));
  const marked = markedOrders(attribution.contributions);
  const orderOf = ({ part, order }: { readonly part: string; readonly order: number }): number =>
    (order * perWheelTurn(input, part)) / perWheelTurn(input, "propeller-shaft");
  const highest = Math.min(seen, Math.max(1, ...marked.map(orderOf)) * 1.15);
  const mapped = yield* mapSteps(channel.samples, attribution.angle, highest * perShaftTurn, perShaftTurn);
  if (!mapped.ok) return mapped;
  const nameOf = orderNames(document, labels);
  return {
    ok: true,
    value: {
      channel: names[attribution.strongest] ?? "",
      quantity: quantities[attribution.strongest] ?? "share",
      orders: [LEAST_ORDER, highest],
      ...grid(mapped.value, perShaftTurn, highest),
      marks: marked
        .filter((one) => orderOf(one) <= highest && orderOf(one) >= LEAST_ORDER)
        .map((one) => ({
          name: nameOf(one),
          at: orderOf(one),
          amplitude: one.amplitudes[attribution.strongest]?.value ?? null,
          share: one.share,
          verdict: attribution.verdict?.part === one.part && attribution.verdict.order === one.order,
        })),
      folded: attribution.contributions.flatMap((one) =>
        foldedMark(one, attribution, { perShaftTurn, highest, name: nameOf(one), order: orderOf(one) }),
      ),
    },
  };
}

const perWheelTurn = ({ parts }: AttributionInput, name: string): number => parts.find(({ part }) => part === name)?.perWheelTurn ?? 1;

/** Turns of the propeller shaft per turn of the shaft whose angle is known. */
const turnsPerShaftTurn = (input: AttributionInput): number => perWheelTurn(input, "propeller-shaft") / input.reference.perWheelTurn;

/** The orders that get a line: those that explain most, from left to right. */
function markedOrders(contributions: readonly Contribution[]): readonly Contribution[] {
  const seen = contributions.filter(({ observable }) => observable).toSorted((a, b) => (b.share ?? 0) - (a.share ?? 0));
  return seen.slice(0, MOST_MARKS).toSorted((a, b) => a.lowest - b.lowest);
}

function orderNames(
  { vehicle }: Case,
  { turningParts, numbers }: FigureLabels,
): (of: { readonly part: string; readonly order: number }) => string {
  const accessories = new Map((vehicle?.accessories ?? []).map(({ id, label }) => [id, label ?? id]));
  return ({ part, order }) =>
    `${turningParts[part as CommonPart] ?? accessories.get(part) ?? part} ${numbers.plain(order, Number.isInteger(order) ? 0 : 1)}`;
}

function* mapSteps(
  samples: AttributionInput["channels"][number]["samples"],
  angle: Attribution["angle"],
  highestOrder: number,
  perShaftTurn: number,
): Generator<number, SignalResult<OrderMap>> {
  let made: SignalResult<OrderMap> | null = null;
  for (const turns of TURNS) {
    made = yield* orderMapSteps(samples, angle, { turns: turns / perShaftTurn, highestOrder, rows: ROWS });
    if (made.ok) return made;
  }
  // A programmer error if there were no settings to try.
  if (made === null) throw new RangeError("no resolution to try");
  return made;
}

/** The map on a grid of even times and of the shaft's orders: the row nearest in time, and the largest of what falls into each column. */
function grid(
  { times, orderSpacing, lines, meanSquare }: OrderMap,
  perShaftTurn: number,
  highest: number,
): Pick<VibrationPicture, "times" | "rows" | "columns" | "amplitudes"> {
  const rows = times.length;
  const [first, last] = [times[0] as number, times[rows - 1] as number];
  // Each row stands for as much time as lies between two.
  const height = rows > 1 ? (last - first) / (rows - 1) : 1;
  const spacing = orderSpacing / perShaftTurn;
  const columns = Math.max(1, Math.min(COLUMNS, Math.floor((highest - LEAST_ORDER) / spacing)));
  const amplitudes = new Float64Array(rows * columns);
  let nearest = 0;
  for (let row = 0; row < rows; row++) {
    const time = first + row * height;
    while (nearest + 1 < rows && Math.abs((times[nearest + 1] as number) - time) <= Math.abs((times[nearest] as number) - time)) nearest++;
    for (let k = 0; k < lines; k++) {
      const column = Math.floor(((k * spacing - LEAST_ORDER) / (highest - LEAST_ORDER)) * columns);
      if (column < 0 || column >= columns) continue;
      const place = row * columns + column;
      amplitudes[place] = Math.max(amplitudes[place] as number, Math.sqrt(2 * (meanSquare[nearest * lines + k] as number)));
    }
  }
  return { times: [first - height / 2, last + height / 2], rows, columns, amplitudes };
}

interface Folding {
  readonly perShaftTurn: number;
  readonly highest: number;
  readonly name: string;
  /** Of the propeller shaft. */
  readonly order: number;
}

/** Where an order above half the rate would show, as far as that lies on the map. */
function foldedMark(
  { observable, foldsTo }: Contribution,
  { blocks, rate }: Attribution,
  { perShaftTurn, highest, name, order }: Folding,
): readonly FoldedMark[] {
  if (observable || foldsTo === null) return [];
  const course = blocks.map(({ time, turnsPerSecond }) => {
    const shaft = turnsPerSecond * perShaftTurn;
    const frequency = order * shaft;
    const at = Math.abs(frequency - rate * Math.round(frequency / rate)) / shaft;
    return { time, at };
  });
  return course.filter(({ at }) => at >= LEAST_ORDER && at <= highest).length < 2 ? [] : [{ name, course }];
}
