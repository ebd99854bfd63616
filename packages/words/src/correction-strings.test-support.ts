import { CHANGE_PROBLEM_CODES, type ChangeProblem } from "@halfturn/casefile";
import { INSTRUCTION_CODES, REASON_CODES } from "@halfturn/engine/correction";
import type { FindingParams } from "@halfturn/engine/findings";
import type { QuantityFaultCode } from "@halfturn/engine/units";
import { type CorrectionNames, correctionReader } from "./correction-reader.js";
import { quantityFaultText } from "./correction-text.js";
import type { CorrectionWords } from "./correction-words.js";
import type { Numbers } from "./numbers/numbers.js";

const same = (id: string): string => id;
export const SAMPLE_NAMES: CorrectionNames = { adjuster: same, state: same, driveline: same, part: same };

const VARIED = ["thickEnd", "toward", "direction", "link", "padAssumed"] as const;
const WAYS: Readonly<Record<(typeof VARIED)[number], readonly [string | boolean, string | boolean]>> = {
  thickEnd: ["forward", "unknown"],
  toward: ["left", "right"],
  direction: ["clockwise", "anticlockwise"],
  link: ["lower", "upper"],
  padAssumed: [true, false],
};

/** Any number, name and word a sentence may ask for, one way or the other. */
export const sampleParams = (other: boolean): FindingParams =>
  new Proxy<Record<string, number | string | boolean | readonly string[]>>(
    {},
    { get: (_, key) => (typeof key === "string" ? sampleValue(key, other) : undefined) },
  );

function sampleValue(key: string, other: boolean): FindingParams[string] | undefined {
  const varied = VARIED.find((one) => one === key);
  if (varied) return WAYS[varied][other ? 1 : 0];
  if (key === "limit") return "joint-over";
  if (key === "curedStates") return ["ab-1", ...(other ? [] : ["cd-2"])];
  if (key === "limitDeg" && other) return undefined;
  return /Deg$|Mm$|RadS2$|^steps$|^combinations$/.test(key) ? (other ? -1 : 3.25) : "ab-1";
}

const FAULT_PARAMS = { found: "xy", unit: "mm", kind: "length", expected: "angle", below: 60 } as const;

/** One problem of every code, with parameters as the parser makes them. */
export const SAMPLE_CHANGE_PROBLEMS: readonly ChangeProblem[] = [
  { code: "change-form", params: { got: "wedge" } },
  { code: "no-adjusters", params: {} },
  { code: "unknown-adjuster", params: { got: "wegde", allowed: ["wedge", "plate"], suggestion: "wedge" } },
  { code: "adjuster-twice", params: { adjuster: "wedge" } },
  { code: "unit-missing", params: { adjuster: "wedge", got: "2", expected: "deg" } },
  { code: "wrong-unit", params: { adjuster: "plate", got: "2deg", expected: "mm" } },
  {
    code: "amount-unreadable",
    params: {
      adjuster: "wedge",
      got: "2.5.1",
      expected: "deg",
      fault: { ok: false, code: "quantity.second-decimal-sign", at: 3, params: {} },
    },
  },
  { code: "steps-not-whole", params: { adjuster: "turn", got: "1.5" } },
  { code: "beyond-stock", params: { adjuster: "wedge", amount: 8, unit: "deg", minimum: -3, maximum: 3 } },
  { code: "beyond-fitted", params: { adjuster: "plate", amount: -9, unit: "mm", fitted: 6 } },
];
export const COVERED_CHANGE_PROBLEMS: readonly string[] = CHANGE_PROBLEM_CODES;

/** Every sentence about corrections under a key that is the same in every language. */
export function correctionStrings(words: CorrectionWords, numbers: Numbers): ReadonlyMap<string, string> {
  const found = new Map<string, string>();
  const { instructions, reasons, changeProblems, quantityFaults, amounts, missing, steps, ...rest } = words;
  for (const other of [false, true]) {
    const reader = correctionReader(sampleParams(other), SAMPLE_NAMES, numbers);
    for (const code of INSTRUCTION_CODES) found.set(`instructions.${code}.${other}`, instructions[code](reader));
    for (const code of REASON_CODES) found.set(`reasons.${code}.${other}`, reasons[code](reader));
    for (const [kind, say] of Object.entries(amounts)) found.set(`amounts.${kind}.${other}`, say("2", other));
    found.set(`steps.${other}`, steps("2", other));
  }
  for (const problem of SAMPLE_CHANGE_PROBLEMS) {
    const say = changeProblems[problem.code] as (params: ChangeProblem["params"], numbers: Numbers, fault: string) => string;
    found.set(`changeProblems.${problem.code}`, say(problem.params, numbers, "ab-1"));
  }
  for (const code of Object.keys(quantityFaults) as QuantityFaultCode[])
    found.set(`quantityFaults.${code}`, quantityFaultText(words, { code, params: FAULT_PARAMS }));
  for (const [kind, say] of Object.entries(missing)) found.set(`missing.${kind}`, say("ab-1"));
  for (const [key, text] of labelStrings(rest)) found.set(key, text);
  return found;
}

function labelStrings(labels: object): readonly (readonly [key: string, text: string])[] {
  return Object.entries(labels).flatMap(([key, value]): readonly (readonly [string, string])[] => {
    if (typeof value === "string") return [[key, value]];
    if (typeof value === "function") return [[key, (value as (...parts: readonly string[]) => string)("ab-1", "cd-2", "ef-3", "gh-4")]];
    return Object.entries(value as Readonly<Record<string, string>>).map(([inner, text]) => [`${key}.${inner}`, text] as const);
  });
}
