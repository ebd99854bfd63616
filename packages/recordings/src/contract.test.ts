import { describe } from "vitest";
import { writeCsv } from "./csv/write-csv.js";
import { type FormUnderTest, keepsRecordingContract } from "./recording-contract.test-support.js";
import { writeUff } from "./uff/write-uff.js";
import { writeWav } from "./wav/write-wav.js";

const FULL_SCALE = 64;
/** A table says everything itself. */
const nothing: FormUnderTest["scales"] = () => [];
const asWav: FormUnderTest["scales"] = (channels) =>
  channels.map(({ name }, k) => ({ id: `channel_${k + 1}`, name, unit: "m/s^2", fullScale: FULL_SCALE }));

const wav = (encoding: Parameters<typeof writeWav>[1]["encoding"], tolerance: number): FormUnderTest => ({
  format: "wav",
  write: (recording) => writeWav(recording, { encoding, fullScale: FULL_SCALE }),
  scales: asWav,
  tolerance,
  stepTolerance: 0,
});

/** Half a step of an integer, and the rounding of the double beside it. */
const halfStep = (bits: number): number => (FULL_SCALE / 2 ** bits) * (1 + 1e-9);
/** 24 bits of mantissa at 50 m/s^2 of 64, as share of full scale. */
const FLOAT32 = FULL_SCALE * 2 ** -25;
/** One product of doubles. */
const EXACT = FULL_SCALE * Number.EPSILON;
/** 4E20.12 holds 13 digits, of values up to 50. */
const UFF_TEXT = 50 * 0.5e-12;
/** The 12 characters of a step hold 7 digits or more. */
const UFF_STEP = 1e-6;

const FORMS: readonly (readonly [string, FormUnderTest])[] = [
  ["WAV of 16 bits", wav("pcm16", halfStep(16))],
  ["WAV of 24 bits", wav("pcm24", halfStep(24))],
  ["WAV of 32 bits", wav("pcm32", halfStep(32))],
  ["WAV of 8 bits", wav("pcm8", halfStep(8))],
  ["WAV of single floats", wav("float32", FLOAT32)],
  ["WAV of double floats", wav("float64", EXACT)],
  ...([",", ";", "\t"] as const).flatMap((separator) =>
    ([".", ","] as const)
      .filter((decimal) => decimal !== separator)
      .map(
        (decimal) =>
          [
            `table parted by ${JSON.stringify(separator)} with ${JSON.stringify(decimal)}`,
            {
              format: "csv",
              write: (recording) => writeCsv(recording, { separator, decimal }),
              scales: nothing,
              tolerance: 0,
              stepTolerance: Number.EPSILON,
            },
          ] satisfies readonly [string, FormUnderTest],
      ),
  ),
  [
    "universal file in text",
    {
      format: "uff",
      write: (recording) => writeUff(recording, { kind: "text" }),
      scales: nothing,
      tolerance: UFF_TEXT,
      stepTolerance: UFF_STEP,
    },
  ],
  ...[true, false].map(
    (littleEndian) =>
      [
        `universal file in ${littleEndian ? "little" : "big"}-endian bytes`,
        {
          format: "uff",
          write: (recording) => writeUff(recording, { kind: "binary", littleEndian }),
          scales: nothing,
          tolerance: 0,
          stepTolerance: UFF_STEP,
        },
      ] satisfies readonly [string, FormUnderTest],
  ),
];

describe.each(FORMS)("%s", (_, form) => keepsRecordingContract(form));
