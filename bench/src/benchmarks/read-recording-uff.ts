import { writeUff } from "@halfturn/recordings";
import type { Benchmark } from "../benchmark.js";
import { longRecording, sumOfSamples, wholeFile } from "./long-recording.js";

/** Universal files: no library in this language reads them, so the kernel is the yardstick. */
export const readRecordingUff: Benchmark = {
  name: "read-recording-uff",
  what: "read a universal file in text, 3 sets of 60,000 values",
  prepare: async () => {
    const bytes = await wholeFile(writeUff(longRecording(30), { kind: "text" }));
    return () => sumOfSamples(bytes);
  },
};
