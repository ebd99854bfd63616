import { writeWav } from "@halfturn/recordings";
import { WaveFile } from "wavefile";
import type { Benchmark } from "../benchmark.js";
import { longRecording, sumOfSamples, wholeFile } from "./long-recording.js";

const file = (): Promise<Uint8Array> => wholeFile(writeWav(longRecording(30), { encoding: "pcm24", fullScale: 10 }));

/** Sound files, beside the library that most people read them with. */
export const readRecordingWav: Benchmark = {
  name: "read-recording-wav",
  what: "read a WAV of 30 s, 3 channels of 24 bits at 2 kHz; in runs of wavefile",
  prepare: async () => {
    const bytes = await file();
    return () => sumOfSamples(bytes);
  },
  preparePeer: async () => {
    const bytes = await file();
    return () => {
      const channels = new WaveFile(bytes).getSamples(false, Float64Array) as unknown as readonly Float64Array[];
      let sum = 0;
      for (const channel of channels) for (const value of channel) sum += value / 2 ** 23;
      return sum;
    };
  },
};
