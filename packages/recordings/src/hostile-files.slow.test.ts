import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { writeCsv } from "./csv/write-csv.js";
import { hostileFiles, seedFiles, survives } from "./hostile-files.test-support.js";
import { writeUff } from "./uff/write-uff.js";
import { writeWav } from "./wav/write-wav.js";

const FILES = 10_000;

const FORMATS = [
  [
    "WAV",
    (["pcm16", "pcm24", "float64"] as const).map(
      (encoding) => (recording: Parameters<typeof writeWav>[0]) => writeWav(recording, { encoding, fullScale: 20 }),
    ),
  ],
  [
    "table",
    (
      [
        { separator: ",", decimal: "." },
        { separator: ";", decimal: "," },
        { separator: "\t", decimal: "." },
      ] as const
    ).map((form) => (recording: Parameters<typeof writeCsv>[0]) => writeCsv(recording, form)),
  ],
  [
    "universal file",
    ([{ kind: "text" }, { kind: "binary", littleEndian: true }, { kind: "binary", littleEndian: false }] as const).map(
      (form) => (recording: Parameters<typeof writeUff>[0]) => writeUff(recording, form),
    ),
  ],
] as const;

/** A plain table as a spreadsheet saves it. */
const inUtf16 = (table: Uint8Array): Uint8Array => Uint8Array.from([0xff, 0xfe, ...[...table].flatMap((letter) => [letter, 0])]);

describe.each(FORMATS)("hostile files: %s", (name, writers) => {
  it("are read or refused with a fault, all 10,000, and never hang or throw", async () => {
    const written = await seedFiles(writers);
    const sound = name === "table" ? [...written, ...written.map(inUtf16)] : written;
    for (const bytes of sound) expect(await survives(bytes)).toBe(false);
    let refused = 0;
    await fc.assert(
      fc.asyncProperty(hostileFiles(sound), async (bytes) => {
        if (await survives(bytes)) refused++;
      }),
      { numRuns: FILES, seed: 1_001, endOnFailure: true },
    );
    // The greater part of the changes breaks a file; were this low, the files would not be hostile.
    expect(refused).toBeGreaterThan(FILES / 3);
  });
});
