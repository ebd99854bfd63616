import { expect, it } from "vitest";
import type { AttributionJson } from "../contract/attribution-contract.js";
import { designCase } from "../design-case.test-support.js";
import { restore } from "../restore/restore.js";
import { serialise } from "../serialise/serialise.js";
import { recordHeard } from "./record-heard.js";

const JSON_HEARD: AttributionJson = {
  format: "halfturn-attribution",
  version: 1,
  durationS: 40,
  sampleRateHz: 500,
  wheelTurns: 400,
  bandHz: 250,
  channel: "accel_z_ms2",
  speedCorrection: null,
  contributions: [
    {
      part: "propeller-shaft",
      order: 1,
      frequencyHz: [30, 40],
      observable: true,
      foldsToHz: null,
      amplitudeMS2: { value: 1, u: 0.01, interval95: [0.98, 1.02] },
      share: 0.6,
      probability: 0.99,
      together: [],
    },
    {
      part: "engine",
      order: 3,
      frequencyHz: [270, 300],
      observable: false,
      foldsToHz: 210,
      amplitudeMS2: null,
      share: null,
      probability: null,
      together: [],
    },
  ],
  unexplainedShare: 0.4,
  noneProbability: 0,
  verdict: { part: "propeller-shaft", order: 1, probability: 0.99 },
  abstained: null,
  coincidences: [],
  resonances: [],
  findings: [],
};
const heard = { file: "road/drive.wav", json: JSON_HEARD, speedFrom: "speed_kmh", gear: "5" };
const read = (document: unknown) => {
  const restored = restore(JSON.stringify(document));
  if (!restored.ok) throw new Error(JSON.stringify(restored.problems));
  return restored.case;
};

it("adds a recording that the case does not know, and the file can be read again", () => {
  const before = read(designCase());
  const after = recordHeard(before, heard, "2026-05-18T10:00:00Z");
  expect(after.recordings).toHaveLength(1);
  expect(after.recordings?.[0]).toMatchObject({ file: "road/drive.wav", heard: { gear: "5", verdict: { part: "propeller-shaft" } } });
  expect(read(JSON.parse(serialise(after, before)))).toEqual(after);
});

it("writes beside a known recording, found by its name without folders, keeps its other keys and replaces what was heard before", () => {
  const before = read({ ...designCase(), recordings: [{ file: "other.csv" }, { file: "drive.wav", gear: "5", "x-mine": 1 }] });
  const once = recordHeard(before, heard, "2026-05-18");
  const twice = recordHeard(
    once,
    { ...heard, json: { ...JSON_HEARD, verdict: null, abstained: { reason: "nothing", between: [] } }, gear: null },
    "2026-05-19",
  );
  expect(twice.recordings?.map(({ file }) => file)).toEqual(["other.csv", "drive.wav"]);
  expect(twice.recordings?.[0]).toEqual({ file: "other.csv" });
  expect(twice.recordings?.[1]).toMatchObject({ gear: "5", "x-mine": 1, heard: { at: "2026-05-19", verdict: null } });
  expect(twice.updatedAt).toBe("2026-05-19");
});
