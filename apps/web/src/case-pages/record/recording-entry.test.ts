import { newCase, restore, serialise } from "@halfturn/casefile";
import { expect, test } from "vitest";
import { dropRecording, keepRecording, recordingEntry } from "./recording-entry.js";

const document = newCase({ id: "road", title: "Road", layout: "two-piece", createdAt: "2026-05-04T07:30:00Z" });
const entry = recordingEntry({
  file: "drive.wav",
  recordedAt: "2026-05-04T08:00:00Z",
  gear: null,
  scales: [{ id: "channel_1", unit: "g", fullScale: 4 }, { id: "channel_2" }],
  perTurn: 2,
  filter: 120,
});

test("the case file takes the entry as it is, and reads it back", () => {
  const kept = keepRecording(entry)(document);
  const again = restore(serialise(kept));
  expect(again).toMatchObject({ ok: true });
  expect(again.ok && again.case.recordings).toEqual([
    {
      file: "drive.wav",
      recordedAt: "2026-05-04T08:00:00Z",
      channels: [{ id: "channel_1", unit: "g", fullScale: 4 }],
      pulsesPerTurn: 2,
      filterHz: 120,
    },
  ]);
});

test("nothing is said of what is not known", () => {
  expect(recordingEntry({ file: "a.csv", recordedAt: null, gear: null, scales: [], perTurn: 1, filter: null })).toEqual({
    file: "a.csv",
  });
});

test("a file is kept once, and what else was said of it stays", () => {
  const labelled = keepRecording({ file: "drive.wav", label: "Hill" })(document);
  expect(keepRecording(entry)(labelled).recordings).toEqual([{ ...entry, label: "Hill" }]);
});

test("the last recording taken out leaves no empty list", () => {
  expect(dropRecording("drive.wav")(keepRecording(entry)(document))).toEqual(document);
});
