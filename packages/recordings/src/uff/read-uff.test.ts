import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { memorySource } from "../bytes/byte-source.js";
import { encodeText } from "../bytes/decode-text.js";
import { memoryRecording } from "../memory-recording.js";
import { openRecording } from "../open-recording.js";
import { accel, bytesOf, opened, readAll } from "../recording-contract.test-support.js";
import { fittedNumber } from "./fitted-number.js";
import { writeUff } from "./write-uff.js";

const MARK = "    -1";
const axis = (type: number, unit: string): string => `${String(type).padStart(10)}    0    0    0 ${"NONE".padEnd(20)} ${unit.padEnd(20)}`;

interface Set {
  readonly name?: string;
  readonly functionType?: number;
  readonly ordinate?: number;
  readonly count?: number;
  readonly even?: number;
  readonly start?: string;
  readonly step?: string;
  readonly unit?: string;
  readonly type?: number;
  readonly tag?: string;
}

/** The head of a data set 58, laid out by hand by the columns of its records. */
const head = ({
  name = "seat rail",
  functionType = 1,
  ordinate = 2,
  count = 7,
  even = 1,
  start = "0.00000E+00",
  step = "1.00000E-02",
  unit = "m/s^2",
  type = 12,
  tag = "    58",
}: Set = {}): string =>
  [
    MARK,
    tag,
    name,
    "NONE",
    "01-JAN-20 00:00:00",
    "NONE",
    "NONE",
    `${String(functionType).padStart(5)}         0    0         0 NONE                3   3 NONE                0   0`,
    `${String(ordinate).padStart(10)}${String(count).padStart(10)}${String(even).padStart(10)}${start.padStart(13)}${step.padStart(13)}  0.00000E+00`,
    axis(17, "s"),
    axis(type, unit),
    axis(0, "NONE"),
    axis(0, "NONE"),
    "",
  ].join("\n");

const SEVEN = "  1.00000E+00  2.00000E+00  3.00000E+00  4.00000E+00  5.00000E+00  6.00000E+00\n  7.00000E+00\n";
const set = (of: Set = {}, data = SEVEN): string => `${head(of)}${data}${MARK}\n`;
const ONE_TO_SEVEN = [1, 2, 3, 4, 5, 6, 7];

const faultOf = async (bytes: Uint8Array): Promise<unknown> => {
  const recording = await openRecording(memorySource(bytes));
  if (!recording.ok) return recording;
  for await (const block of recording.value.read({ track: 0, channels: [0] })) if (!block.ok) return block;
  return null;
};

describe("readUff", () => {
  it.each([
    ["single, even", set()],
    ["blank lines and Windows line ends", `\r\n${set()}`.replaceAll("\n", "\r\n")],
    ["a last row padded with blanks", set({}, SEVEN.replace(/\n$/, `${" ".repeat(65)}\n`))],
    ["exponents of three digits", set({}, SEVEN.replaceAll(" ", "").replaceAll("E+00", "E+000").replaceAll("0E+000", "0E+000 "))],
    ["numbers parted by blanks", set({}, "1 2.0 3 4\n5 6e0\n7\n")],
    [
      "double, even",
      set(
        { ordinate: 4 },
        "    1.000000000000E+00    2.000000000000E+00    3.000000000000E+00    4.000000000000E+00\n    5.000000000000E+00    6.000000000000E+00    7.000000000000E+00\n",
      ),
    ],
    [
      "sets of other kinds around it",
      `${MARK}\n   164\n         1SI\n  1.0D+00\n${MARK}\n${set()}${MARK}\n    15\n 1 0 0 1 0 0 0\n${MARK}\n`,
    ],
  ])("reads %s", async (_, text) => {
    const recording = await opened(encodeText(text));
    expect(recording.tracks).toHaveLength(1);
    expect(recording.tracks[0]?.channels[0]).toMatchObject({ id: "seat rail", quantity: "acceleration" });
    expect(recording.tracks[0]?.clock).toEqual({ kind: "even", start: 0, rate: 100, count: 7 });
    expect((await readAll(recording)).values).toEqual([ONE_TO_SEVEN]);
  });

  it("reads numbers that touch", async () => {
    const touching = "-1.00000E+000-2.00000E+000 3.00000E+000-4.00000E+000\n";
    expect((await readAll(await opened(encodeText(set({ count: 4 }, touching))))).values).toEqual([[-1, -2, 3, -4]]);
  });

  it("reads uneven sets, single and double", async () => {
    const single = set({ even: 0, count: 3 }, "  0.00000E+00  1.00000E+00  1.00000E-01  2.00000E+00  3.00000E-01  3.00000E+00\n");
    const double = set(
      { even: 0, count: 3, ordinate: 4 },
      "  0.00000E+00  1.000000000000E+00  1.00000E-01  2.000000000000E+00\n  3.00000E-01  3.000000000000E+00\n",
    );
    for (const text of [single, double]) {
      const recording = await opened(encodeText(text));
      expect(recording.tracks[0]?.clock).toEqual({ kind: "stamped", count: 3 });
      expect(await readAll(recording)).toEqual({ times: [0, 0.1, 0.3], values: [[1, 2, 3]] });
    }
  });

  it("keeps sets on clocks of their own, tells same names apart, and leaves spectra out", async () => {
    const text =
      set() +
      set({ name: "speed", unit: "km/h", type: 0, step: "1.00000E+00" }) +
      set() +
      set({ functionType: 2 }) +
      set({ ordinate: 5 }, SEVEN + SEVEN);
    const recording = await opened(encodeText(text));
    expect(recording.tracks.map(({ channels }) => channels[0]?.id)).toEqual(["seat rail", "speed", "seat rail#2"]);
    expect(recording.notes).toMatchObject([{ code: "recording.sets-skipped", params: { sets: 2 } }]);
    expect((await readAll(recording, 1)).times).toEqual([0, 1, 2, 3, 4, 5, 6]);
    expect((await readAll(recording, 1)).values[0]?.[0]).toBe(1000 / 3600);
  });

  it("takes SI for a kind of data that names no unit, and says so", async () => {
    const recording = await opened(encodeText(set({ unit: "NONE" })));
    expect(recording.tracks[0]?.channels[0]).toMatchObject({ unit: "m/s^2", quantity: "acceleration" });
    expect(recording.notes).toMatchObject([{ code: "recording.unit-taken" }]);
  });

  it("converts units of values and times", async () => {
    const recording = await opened(encodeText(set({ unit: "g" })));
    expect((await readAll(recording)).values[0]?.[1]).toBe(2 * 9.806_65);
  });

  it.each([
    [1, true],
    [2, false],
  ])("reads bytes in order %i, single", async (order, littleEndian) => {
    const data = new DataView(new ArrayBuffer(28));
    for (const [k, value] of ONE_TO_SEVEN.entries()) data.setFloat32(4 * k, value, littleEndian);
    const tag = `    58b     ${order}     2          11          28     0     0           0           0`;
    const bytes = Uint8Array.from([
      ...encodeText(head({ tag })),
      ...new Uint8Array(data.buffer),
      ...encodeText(`${MARK}\n`),
      ...encodeText(set()),
    ]);
    const recording = await opened(bytes);
    expect(recording.tracks).toHaveLength(2);
    for (const track of [0, 1]) expect((await readAll(recording, track)).values).toEqual([ONE_TO_SEVEN]);
  });

  it("reads uneven bytes with single and with double times", async () => {
    for (const width of [4, 8]) {
      const data = new DataView(new ArrayBuffer(2 * (width + 8)));
      for (const k of [0, 1]) {
        if (width === 4) data.setFloat32(k * 12, k / 2, true);
        else data.setFloat64(k * 16, k / 2, true);
        data.setFloat64(k * (width + 8) + width, k + 1, true);
      }
      const tag = `    58b     1     2          11${String(data.byteLength).padStart(12)}     0     0           0           0`;
      const bytes = Uint8Array.from([
        ...encodeText(head({ tag, even: 0, ordinate: 4, count: 2 })),
        ...new Uint8Array(data.buffer),
        ...encodeText(MARK),
      ]);
      expect(await readAll(await opened(bytes))).toEqual({ times: [0, 0.5], values: [[1, 2]] });
    }
  });

  it.each([
    ["no set at all", `${MARK}\n    15\n${MARK}\n`, "recording.no-time-signal"],
    ["a spectrum only", set({ functionType: 2 }), "recording.no-time-signal"],
    ["no values", set({ count: 0 }, ""), "recording.no-samples"],
    ["more values promised than there can be", set({ count: 2_000_000_000 }), "recording.truncated"],
    ["more values promised than there are", set({ count: 9 }), "recording.header-contradicts"],
    ["fewer values promised than there are", set({ count: 3 }), "recording.header-contradicts"],
    ["no end", head() + SEVEN, "recording.part-missing"],
    ["no data", head(), "recording.truncated"],
    ["half a head", head().slice(0, 200), "recording.part-missing"],
    ["a word among the numbers", set({}, SEVEN.replace("4.00000E+00", "  seven    ")), "recording.not-a-number"],
    ["a step of zero", set({ step: "0.00000E+00" }), "recording.header-contradicts"],
    ["a step that is no number", set({ step: "fast" }), "recording.header-contradicts"],
    ["an unknown kind of ordinate", set({ ordinate: 9 }), "recording.encoding-unsupported"],
    [
      "a third byte order",
      set({ tag: "    58b     3     2          11          28     0     0           0           0" }),
      "recording.header-contradicts",
    ],
    [
      "floats of another make",
      set({ tag: "    58b     1     1          11          28     0     0           0           0" }),
      "recording.encoding-unsupported",
    ],
    [
      "more bytes promised than there are",
      set({ tag: "    58b     1     2          11  4000000000     0     0           0           0" }),
      "recording.truncated",
    ],
    [
      "bytes that do not end where they should",
      set({ tag: "    58b     1     2          11          28     0     0           0           0" }),
      "recording.header-contradicts",
    ],
    ["words after the last set", `${set()}nonsense\n`, "recording.part-missing"],
  ])("refuses %s", async (_, text, code) => {
    expect(await faultOf(encodeText(text))).toMatchObject({ ok: false, code });
  });
});

describe("writeUff", () => {
  it("leaves out samples without a value where each has its own time, and refuses them where none has", async () => {
    const channels = [accel("a")];
    const values = [Float64Array.of(1, Number.NaN, 3)];
    const stamped = memoryRecording([
      { channels, clock: { kind: "stamped", count: 3 }, times: Float64Array.of(0.125, 12.25, 59.123_456_789), values },
    ]);
    for (const form of [{ kind: "text" }, { kind: "binary", littleEndian: false }] as const) {
      const read = await readAll(await opened(await bytesOf(writeUff(stamped, form))));
      expect(read).toEqual({ times: [0.125, 59.123_456_789], values: [[1, 3]] });
    }
    const even = memoryRecording([{ channels, clock: { kind: "even", start: 0, rate: 10, count: 3 }, times: null, values }]);
    await expect(bytesOf(writeUff(even, { kind: "text" }))).rejects.toThrow("recording.cannot-hold");
    await expect(bytesOf(writeUff(memoryRecording([]), { kind: "text" }))).rejects.toThrow("recording.cannot-hold");
  });
});

describe("fittedNumber", () => {
  it("fits, has a point, and is as close as its digits allow", () => {
    fc.assert(
      fc.property(fc.double({ min: -1e90, max: 1e90, noNaN: true }), (value) => {
        const text = fittedNumber(value, 12);
        expect(text.length).toBeLessThanOrEqual(12);
        expect(text).toContain(".");
        // A sign, a point, and an exponent of up to five characters leave five digits or more.
        expect(Math.abs(Number(text) - value)).toBeLessThanOrEqual(Math.abs(value) * 0.5e-4);
      }),
    );
  });
});
