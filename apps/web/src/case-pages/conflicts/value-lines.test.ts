import { expect, test } from "vitest";
import { fieldNames } from "../../words/field-names.js";
import { type ValueWords, valueLines } from "./value-lines.js";

const words: ValueWords = {
  names: fieldNames.en,
  yes: "yes",
  no: "no",
  nothing: "taken out",
  number: (value, key) => `${value.toFixed(1)}${key.endsWith("Mm") ? " mm" : ""}`,
  code: (value) => value,
  part: (id) => `Section ${id}`,
};

test("a value is said as a person would: names for keys, words for truth, a dash between two ends", () => {
  expect(valueLines(undefined, words)).toEqual(["taken out"]);
  expect(valueLines([60, 80], words)).toEqual(["60.0 – 80.0"]);
  expect(valueLines(1180, words, "lengthMm")).toEqual(["1180.0 mm"]);
  expect(valueLines([3, 6], words, "sizesMm")).toEqual(["3.0 mm – 6.0 mm"]);
  expect(valueLines({ phasingMeasured: true, lengthMm: 1180 }, words)).toEqual([
    "Phasing measured: yes",
    "Length, joint centre to joint centre: 1180.0 mm",
  ]);
  expect(valueLines({ at: "driven", deg: 1.2 }, words)).toEqual(["at: driven", "Display: 1.2"]);
});

test("what goes on and on is cut short", () => {
  expect(valueLines({ a: { b: { c: { d: 1 } } } }, words)).toEqual(["a: b: c: …"]);
});

test("a part is one line, under what it is called", () => {
  const sections = [{ id: "front", lengthMm: 900, phasingMeasured: false }, { id: "back" }];
  expect(valueLines({ runs: "rearward", source: {}, sections, joints: [{ id: "J2", support: {} }] }, words)).toEqual([
    "Runs: rearward",
    "Sections:",
    "Section front: Length, joint centre to joint centre: 900.0 mm, Phasing measured: no",
    "Section back",
    "Joints: Section J2: Support bearing",
  ]);
});
