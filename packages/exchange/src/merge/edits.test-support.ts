import { type Case, type CaseReading, newCase } from "@halfturn/casefile";
import fc from "fast-check";

const reading = (at: string, deg: number): CaseReading => ({ at, deg, lower: "driven-end", side: "left" });

/** A two-piece driveline that was gauged once, with something to adjust and one correction. */
export const sampleCase: Case = {
  ...newCase({ id: "case-1", title: "Rumble at 70", layout: "two-piece", createdAt: "2026-02-03T08:00:00Z" }),
  vehicle: { label: "Van 4", axleRatio: 3.9, gears: [{ label: "4", ratio: 1 }] },
  complaint: { speedKmh: [60, 80], feel: ["floor"] },
  gauging: [
    {
      driveline: "rear",
      stage: "as-found",
      takenAt: "2026-02-03T09:00:00Z",
      state: { rideHeight: "normal", wheels: "on-ground" },
      gauge: { resolutionDeg: 0.1, accuracyDeg: 0.1 },
      readings: [reading("source", 2), reading("front", 3), reading("front", 3.1)],
    },
  ],
  adjusters: [{ id: "wedge", kind: "axle-wedge", driveline: "rear", stock: { sizesDeg: [1, 2] } }],
  corrections: [
    {
      state: "chosen",
      chosenAt: "2026-02-03T10:00:00Z",
      basis: [{ driveline: "rear", gauging: 0 }],
      changes: [{ adjuster: "wedge", amount: 1, unit: "deg" }],
      predicted: [],
    },
  ],
};

type Edit = (document: Case) => Case;
type Gauging = NonNullable<Case["gauging"]>[number];

const inGauging =
  (index: number, change: (gauging: Gauging) => Gauging): Edit =>
  (document) => ({
    ...document,
    gauging: (document.gauging ?? []).map((gauging, k) => (k === index ? change(gauging) : gauging)),
  });

const inReadings = (change: (readings: readonly CaseReading[]) => readonly CaseReading[]): Edit =>
  inGauging(0, (gauging) => ({ ...gauging, readings: change(gauging.readings) }));

const moment = (minute: number): string => `2026-02-04T09:${String(minute).padStart(2, "0")}:00Z`;
const name = fc.constantFrom("a", "b", "c");
const degrees = fc.integer({ min: 0, max: 60 }).map((tenths) => tenths / 10);

/** One thing that somebody may do to a case. */
export const anyEdit: fc.Arbitrary<Edit> = fc.oneof(
  name.map(
    (title): Edit =>
      (document) => ({ ...document, title }),
  ),
  name.map(
    (label): Edit =>
      (document) => ({ ...document, vehicle: { ...document.vehicle, label } }),
  ),
  fc.constant<Edit>(({ vehicle: _, ...document }) => document),
  degrees.map(
    (axleRatio): Edit =>
      (document) => ({ ...document, vehicle: { ...document.vehicle, axleRatio } }),
  ),
  name.map(
    (feel): Edit =>
      (document) => ({ ...document, complaint: { ...document.complaint, feel: [...(document.complaint?.feel ?? []), feel] } }),
  ),
  fc.constant<Edit>((document) => ({ ...document, complaint: { ...document.complaint, feel: [] } })),
  degrees.map(
    (low): Edit =>
      (document) => ({ ...document, complaint: { ...document.complaint, speedKmh: [low, 90] } }),
  ),
  fc.tuple(fc.integer({ min: 0, max: 1 }), degrees).map(
    ([at, lengthMm]): Edit =>
      (document) => ({
        ...document,
        drivelines: document.drivelines.map((driveline) => ({
          ...driveline,
          sections: driveline.sections.map((section, k) => (k === at ? { ...section, lengthMm } : section)),
        })),
      }),
  ),
  fc
    .tuple(fc.constantFrom("back", "driven", "front"), degrees)
    .map(([at, deg]) => inReadings((readings) => [...readings, reading(at, deg)])),
  fc.tuple(fc.nat(4), degrees).map(([at, deg]) => inReadings((readings) => readings.map((one, k) => (k === at ? { ...one, deg } : one)))),
  fc.nat(4).map((at) => inReadings((readings) => readings.filter((_, k) => k !== at))),
  fc.nat(5).map(
    (minute): Edit =>
      (document) => ({
        ...document,
        gauging: [
          ...(document.gauging ?? []),
          { ...(sampleCase.gauging?.[0] as Gauging), stage: "after", takenAt: moment(minute), readings: [] },
        ],
      }),
  ),
  fc.nat(5).map(
    (minute): Edit =>
      (document) => ({
        ...document,
        corrections: [
          ...(document.corrections ?? []),
          {
            state: "made",
            chosenAt: moment(minute),
            basis: [{ driveline: "rear", gauging: Math.max(0, (document.gauging?.length ?? 1) - 1) }],
            changes: [],
            predicted: [],
          },
        ],
      }),
  ),
  fc.constant<Edit>((document) => ({ ...document, adjusters: [] })),
  degrees.map(
    (labour): Edit =>
      (document) => ({ ...document, adjusters: (document.adjusters ?? []).map((adjuster) => ({ ...adjuster, labour })) }),
  ),
  fc.nat(5).map(
    (minute): Edit =>
      (document) => ({ ...document, updatedAt: moment(minute) }),
  ),
);

/** A few edits one after the other. */
export const anyEdits = fc.array(anyEdit, { maxLength: 5 }).map((edits) => edits.reduce((document, edit) => edit(document), sampleCase));
