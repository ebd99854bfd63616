import { expect, test } from "vitest";
import { designCase } from "../design-case.test-support.js";
import { restore } from "../restore/restore.js";
import { toRecordingSettings } from "./to-recording-settings.js";

const recordings = [
  {
    file: "runs/first.wav",
    gear: "5",
    unit: "g",
    fullScale: 4,
    filterHz: 800,
    channels: [{ id: "channel_2", name: "tacho_propeller_shaft", unit: "V" }],
  },
  { file: "second.csv", pulsesPerTurn: 2 },
];
const restored = (change: object) => restore({ ...designCase(), ...change });
const document = (() => {
  const result = restored({ recordings });
  if (!result.ok) throw new Error(JSON.stringify(result.problems));
  return result.case;
})();

test("a channel takes what is said of it, and else what is said of the recording", () => {
  expect(toRecordingSettings(document, "runs/first.wav", ["channel_1", "channel_2"])).toEqual({
    index: 0,
    gear: "5",
    pulsesPerTurn: 1,
    filter: 800,
    channels: [
      { id: "channel_2", name: "tacho_propeller_shaft", unit: "V", fullScale: 4 },
      { id: "channel_1", unit: "g", fullScale: 4 },
    ],
  });
});

test("a file is found by its name without folders, and one that the case does not know has nothing said of it", () => {
  expect(toRecordingSettings(document, "/somewhere/second.csv", ["time_s"])).toEqual({
    index: 1,
    gear: undefined,
    pulsesPerTurn: 2,
    filter: null,
    channels: [],
  });
  expect(toRecordingSettings(document, "third.csv").index).toBeNull();
});

test("slips in a recording are found: a key, a number, a gear", () => {
  const problemsOf = (recording: object): unknown => {
    const result = restored({ recordings: [recording] });
    return result.ok ? [] : result.problems.map(({ code, path }) => [code, path]);
  };
  expect(problemsOf({ file: "a.wav", fulScale: 4 })).toEqual([["unknown-key-near", "recordings[0].fulScale"]]);
  expect(problemsOf({ file: "a.wav", fullScale: 0 })).toEqual([["out-of-range", "recordings[0].fullScale"]]);
  expect(problemsOf({ file: "a.wav", gear: "9" })).toEqual([["unknown-reference", "recordings[0].gear"]]);
  expect(problemsOf({ gear: "5" })).toEqual([["missing", "recordings[0].file"]]);
});
