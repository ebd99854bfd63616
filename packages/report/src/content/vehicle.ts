import type { Case } from "@halfturn/casefile";
import type { Numbers } from "@halfturn/words";
import type { ReportWords } from "../words/index.js";
import type { Block } from "./blocks.js";

interface Item {
  readonly label: string;
  readonly value: string;
}

/** Ratios are stamped and printed with two decimals, some with three. */
const ratioText = (ratio: number, numbers: Numbers): string =>
  numbers.plain(ratio, Math.abs(ratio * 100 - Math.round(ratio * 100)) < 1e-6 ? 2 : 3);

function vehicleItems({ vehicle }: Case, words: ReportWords, numbers: Numbers): readonly Item[] {
  const at = words.facts;
  const given = (value: string | undefined): string => value ?? at.notGiven;
  const gears = vehicle?.gears?.map(({ label, ratio }) => `${label}: ${ratioText(ratio, numbers)}`).join("; ");
  const tyre = vehicle?.tyre;
  const circumference =
    tyre && "rollingCircumferenceMm" in tyre ? at.circumference(numbers.length(tyre.rollingCircumferenceMm)) : undefined;
  return [
    { label: at.axleRatio, value: given(vehicle?.axleRatio === undefined ? undefined : ratioText(vehicle.axleRatio, numbers)) },
    ...(vehicle?.transferRatio === undefined ? [] : [{ label: at.transferRatio, value: ratioText(vehicle.transferRatio, numbers) }]),
    { label: at.gears, value: given(gears) },
    { label: at.tyre, value: [tyre?.size, circumference].filter(Boolean).join(", ") || at.notGiven },
    ...(vehicle?.cylinders === undefined ? [] : [{ label: at.cylinders, value: String(vehicle.cylinders) }]),
    {
      label: at.maxShaftSpeed,
      value: given(vehicle?.maxShaftSpeedRpm === undefined ? undefined : numbers.speed(vehicle.maxShaftSpeedRpm)),
    },
  ];
}

function complaintItems({ complaint }: Case, words: ReportWords, numbers: Numbers): readonly Item[] {
  const at = words.facts;
  // The words that the format suggests are said in the reader's language; any other stands as it was written.
  const said = (word: string): string => (Object.hasOwn(at.complaintWords, word) ? (at.complaintWords[word] as string) : word);
  const whole = (kmh: number): string => numbers.bareRoadSpeed(kmh, 0);
  const items: (Item | false | undefined)[] = [
    complaint?.speedKmh && {
      label: at.complaintSpeed,
      value: at.speeds(whole(complaint.speedKmh[0]), whole(complaint.speedKmh[1]), numbers.speedUnit),
    },
    complaint?.gear !== undefined && { label: at.gear, value: complaint.gear },
    complaint?.feel !== undefined && complaint.feel.length > 0 && { label: at.feel, value: numbers.all(complaint.feel.map(said)) },
    complaint?.load !== undefined && { label: at.load, value: said(complaint.load) },
  ];
  return items.filter((item): item is Item => typeof item === "object");
}

/** One line on the complaint, for the head of the report. */
export function complaintText(file: Case, words: ReportWords, numbers: Numbers): string {
  const { complaint } = file;
  const parts = [...complaintItems(file, words, numbers).map(({ label, value }) => `${label} ${value}`), complaint?.notes];
  return parts.filter(Boolean).join("; ") || words.facts.notGiven;
}

export const vehicleBlocks = (file: Case, words: ReportWords, numbers: Numbers): readonly Block[] => [
  { kind: "facts", items: [...vehicleItems(file, words, numbers), ...complaintItems(file, words, numbers)] },
  ...(file.notes ? [{ kind: "paragraph" as const, text: file.notes }] : []),
];
