import { type CoincidenceJson, type PowertrainNote, PROBLEM_CODES, type Problem } from "@halfturn/casefile";
import { FINDING_CODES, type Finding, type FindingParams } from "@halfturn/engine/findings";
import { type Catalogue, problemText } from "./catalogue.js";
import { correctionStrings } from "./correction-strings.test-support.js";
import { findingText } from "./finding-text.js";
import { noteText } from "./order-words.js";
import { SAMPLE_RECORDING_FAULTS } from "./recording-faults.test-support.js";
import { recordingFaultText } from "./recording-words.js";

/** One problem of every code, with parameters as the case file makes them. */
export const SAMPLE_PROBLEMS: readonly Problem[] = [
  { code: "empty-file", path: "", params: {} },
  { code: "not-json", path: "", params: { line: 4, column: 9 } },
  { code: "not-a-case", path: "format", params: { expected: "halfturn-case", got: "poem" } },
  { code: "wrong-version", path: "version", params: { got: 7, newest: 1 } },
  { code: "too-large", path: "", params: { of: "bytes", got: 50_000_000, limit: 20_000_000 } },
  { code: "missing", path: "drivelines[0].runs", params: { key: "runs", allowed: ["rearward", "forward"] } },
  { code: "wrong-type", path: "gauging[0].readings[1].deg", params: { expected: "number", got: "string", value: '"O.8"' } },
  { code: "out-of-range", path: "gauging[0].readings[1].deg", params: { of: "number", got: 91, minimum: 0, below: 90 } },
  { code: "not-allowed", path: "gauging[0].readings[1].side", params: { got: "lefft", allowed: ["left", "right"], suggestion: "left" } },
  { code: "wrong-form", path: "drivelines[0].id", params: { expected: "id", got: "Rear 1" } },
  { code: "unknown-key-near", path: "drivelines[0].sectons", params: { key: "sectons", suggestion: "sections" } },
  { code: "key-not-here", path: "gauging[0].readings[1].face", params: { key: "face" } },
  {
    code: "unknown-shaft",
    path: "gauging[0].readings[1].at",
    params: { got: "fornt", allowed: ["source", "front", "driven"], suggestion: "front" },
  },
  {
    code: "unknown-reference",
    path: "gauging[0].driveline",
    params: { of: "driveline", got: "raer", allowed: ["rear"], suggestion: "rear" },
  },
  { code: "duplicate-id", path: "drivelines[1].id", params: { id: "rear", first: "drivelines[0].id" } },
  { code: "reserved-id", path: "drivelines[0].sections[0].id", params: { id: "source" } },
  { code: "count-mismatch", path: "drivelines[0].sections", params: { of: "sections", expected: 1, got: 3 } },
  {
    code: "contradiction",
    path: "drivelines[0].axle",
    params: { key: "wallMm", relation: "less-than", other: "outerDiameterMm", got: 80, limit: 76.2 },
  },
  { code: "face-reading", path: "gauging[0].readings[1].deg", params: { got: 89.5, offPlumb: 0.5, marked: false } },
  { code: "length-unit", path: "drivelines[0].sections[0].lengthMm", params: { got: 1.35, meant: 1350 } },
  { code: "same-shaft", path: "gauging[0].readings[1].between", params: { shaft: "front" } },
  { code: "unreadable-tyre", path: "vehicle.tyre.size", params: { got: "265-70", why: "unreadable" } },
];

const near: CoincidenceJson = {
  first: { part: "wheel", order: 3 },
  second: { part: "propeller-shaft", order: 1 },
  separationWheelOrders: 0.080_000_000_000_000_07,
  wheelTurns: 50,
  distanceM: 164.09,
  partedByGear: false,
};
const same: CoincidenceJson = { ...near, separationWheelOrders: 0, wheelTurns: null, distanceM: null };

/** Every way in which two orders can lie too close, and every form of an order's name. */
export const SAMPLE_COINCIDENCES = {
  near,
  nearByGear: { ...near, first: { part: "transfer-shaft", order: 4 }, second: { part: "engine", order: 1.5 }, partedByGear: true },
  same: { ...same, first: { part: "engine", order: 1 }, second: { part: "fan", order: 1 } },
  sameByGear: { ...same, first: { part: "propeller-shaft", order: 1 }, second: { part: "engine", order: 0.5 }, partedByGear: true },
} as const satisfies Readonly<Record<string, CoincidenceJson>>;

export const SAMPLE_NOTES: readonly PowertrainNote[] = [
  { code: "gear-taken", path: "complaint.gear", params: { gear: "4", why: "direct" } },
  { code: "gear-taken", path: "complaint.gear", params: { gear: "4", why: "only" } },
  { code: "gear-unknown", path: "vehicle.gears", params: { gears: [] } },
  { code: "gear-unknown", path: "vehicle.gears", params: { gears: ["4", "5"] } },
  { code: "transfer-ratio-taken", path: "vehicle.transferRatio", params: {} },
];

/** Any number and any name a sentence may ask for. */
const ALL_PARAMS: FindingParams = new Proxy<Record<string, number | string | readonly string[]>>(
  {},
  {
    get: (_, key) =>
      typeof key !== "string"
        ? undefined
        : /Deg$|RadS2$|Rpm$|share$|S$|Hz$|Kmh$|Percent$|Share$|^(?:wheelTurns|order|otherOrder|count|line|sets|seconds)$/.test(key)
          ? 3.25
          : /^shafts$|^sections$|^joints$/.test(key)
            ? ["ab-1", "cd-2"]
            : "ab-1",
  },
);

export const SAMPLE_FINDINGS: readonly Finding[] = FINDING_CODES.map((code) => ({
  code,
  severity: "warn",
  path: "gauging[0]",
  params: ALL_PARAMS,
}));

/** Every sentence and label of a catalogue under a key that is the same in every language. Functions are called with one fixed set of arguments. */
export function catalogueStrings(catalogue: Catalogue): ReadonlyMap<string, string> {
  const found = new Map<string, string>();
  const {
    findings: _findings,
    problems: _problems,
    numbers: _numbers,
    language: _language,
    explanations,
    correction,
    recording,
    phrases,
    orders,
    vibration,
    ...rest
  } = catalogue;
  walk(found, "", rest);
  for (const [key, text] of correctionStrings(correction, catalogue.numbers)) found.set(`correction.${key}`, text);
  walk(found, "phrases.causes", phrases.causes);
  walk(found, "phrases.places", phrases.places);
  const { coincidence, notes: _notes, orderOf, ...orderLabels } = orders;
  for (const [part, order] of [
    ["wheel", 1],
    ["engine", 1.5],
    ["fan", 1],
  ] as const)
    found.set(
      `orders.orderOf.${part}`,
      orderOf(part, order, () => "ab-1"),
    );
  walk(found, "orders", orderLabels);
  for (const [name, of] of Object.entries(SAMPLE_COINCIDENCES))
    found.set(
      `orders.coincidence.${name}`,
      coincidence(of, () => "ab-1"),
    );
  SAMPLE_NOTES.forEach((note, k) => {
    found.set(`orders.notes.${note.code}.${k}`, noteText(orders, note, catalogue.numbers));
  });
  SAMPLE_FINDINGS.forEach((finding) => {
    Object.entries(findingText(catalogue, finding)).forEach(([part, text]) => {
      found.set(`findings.${finding.code}.${part}`, text);
    });
  });
  walk(found, "recording", { ...recording, faults: {} });
  for (const fault of SAMPLE_RECORDING_FAULTS)
    found.set(`recording.faults.${fault.code}`, recordingFaultText(recording, fault, catalogue.numbers));
  const { faults: signalFaults, verdict, ...vibrationLabels } = vibration;
  walk(found, "vibration", vibrationLabels);
  found.set("vibration.verdict", verdict({ order: "ab-1", cause: "cd-2", probability: "90\u00a0%", share: "40\u00a0%" }));
  for (const [code, say] of Object.entries(signalFaults))
    found.set(`vibration.faults.${code}`, say({ samples: 3, needed: 9, pulses: 2, rate: 0, time: 3.25, limit: 49 }, catalogue.numbers));
  SAMPLE_PROBLEMS.forEach((problem) => {
    found.set(`problems.${problem.code}`, problemText(catalogue, problem));
  });
  const angles = { anglesDeg: [3, 5, 4], signs: [1, -1, 1], benchDeg: 2, equivalentDeg: 0.12 } as const;
  const name = (id: string): string => id;
  found.set("explanations.bench", explanations.bench(angles));
  found.set("explanations.bench-unsigned", explanations.bench({ ...angles, signs: null }));
  found.set("explanations.bench-null", explanations.bench({ ...angles, benchDeg: null }));
  for (const of of ["front", "zero", "heading:front"])
    found.set(`phrases.repeat.${of}`, phrases.repeat({ of, path: "gauging[0].readings[2]", share: 0.6 }, name));
  for (const spelled of ["source", "front:driven-end", "between:front,driven", "turn-round"])
    found.set(`phrases.read.${spelled}`, phrases.readPlace(spelled, name));
  found.set("phrases.doubt", phrases.doubt("gauging[0].readings[2]", [], Object.values(phrases.causes)));
  found.set("phrases.doubt-none", phrases.doubt(null, ["gauging[0].readings[2]"], []));
  found.set("explanations.best-phasing", explanations.bestPhasing("ab-1", 90));
  found.set("explanations.nothing", explanations.nothingToRepeat);
  found.set("explanations.not-road", explanations.notRoadAngles);
  found.set("explanations.intervals", explanations.intervalsMean);
  return found;
}

function walk(found: Map<string, string>, key: string, value: unknown): void {
  if (typeof value === "string") found.set(key, value);
  else if (typeof value === "function") found.set(key, String(value(...sampleArguments(key))));
  else for (const [name, inner] of Object.entries(value as object)) walk(found, key === "" ? name : `${key}.${name}`, inner);
}

const sampleArguments = (key: string): readonly unknown[] => {
  if (/valid\.(drivelines|gaugings|problems)|anglesLarger|noGaugingNumber|wholeNumber/.test(key)) return [2, 3];
  if (key.endsWith("seedAndDraws")) return [1, "20"];
  return ["ab-1", "cd-2", "ef-3"];
};

export const COVERED_PROBLEMS: readonly string[] = PROBLEM_CODES;
