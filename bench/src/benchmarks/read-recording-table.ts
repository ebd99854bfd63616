import { writeCsv } from "@halfturn/recordings";
import { parse } from "csv-parse/sync";
import type { Benchmark } from "../benchmark.js";
import { longRecording, sumOfSamples, wholeFile } from "./long-recording.js";

const file = (): Promise<Uint8Array> => wholeFile(writeCsv(longRecording(3), { separator: ",", decimal: "." }));

/** Tables, beside the library that most people read them with. */
export const readRecordingTable: Benchmark = {
  name: "read-recording-table",
  what: "read a table of 6,000 rows, time and 3 axes; in runs of csv-parse",
  prepare: async () => {
    const bytes = await file();
    return () => sumOfSamples(bytes);
  },
  preparePeer: async () => {
    const bytes = Buffer.from(await file());
    return () => {
      // Its types do not follow `cast`.
      const rows = parse(bytes, { from_line: 2, cast: Number }) as unknown as readonly (readonly number[])[];
      let sum = 0;
      for (const row of rows) for (let axis = 1; axis < row.length; axis++) sum += row[axis] as number;
      return sum;
    };
  },
};
