import { existsSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { type ChannelScale, writeCsv } from "@halfturn/recordings";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { type Conversion, contentOfFile, conversion } from "./convert.test-support.js";
import { buildProgram, type Program } from "./program.test-support.js";
import { drive, firstTrackOf, recordingOf, writeFile } from "./road-test.test-support.js";

let program: Program;
beforeAll(async () => {
  program = await buildProgram();
  program.example("two-piece", "case.json");
  const made = recordingOf(drive({ profile: { times: [0, 3, 6], speeds: [20, 26, 22] } }));
  await writeFile(program.path("drive.csv"), writeCsv(firstTrackOf(made), { separator: ",", decimal: "." }));
  await writeFile(program.path("two-clocks.csv"), writeCsv(made, { separator: ",", decimal: "." }));
  writeFileSync(
    program.path("jitter.csv"),
    `time_s,accel_z_ms2\n${rows(1000, (k) => [(k + 0.2 * Math.sin(k * k)) / 100.3, Math.sin(k / 3)])}`,
  );
  writeFileSync(program.path("late.csv"), `time_s,accel_z_ms2\n${rows(100, (k) => [5 + k / 100, Math.sin(k / 3)])}`);
}, 60_000);
afterAll(() => program.remove());

const rows = (count: number, row: (k: number) => readonly number[]): string =>
  Array.from({ length: count }, (_, k) => `${row(k).join(",")}\n`).join("");

const convert = (...args: string[]) => program.run(["convert", ...args]);

const converted = (...args: string[]): Promise<Conversion> => conversion(program, args);
const contentOf = (name: string, scales: readonly ChannelScale[] = []) => contentOfFile(program.path(name), scales);

describe("convert", () => {
  it("writes the channels and the stretch that are asked for", async () => {
    const [whole] = await contentOf("drive.csv");
    await converted("drive.csv", "-o", "part.csv", "--channel", "accel_z", "--channel", "ACCEL_X", "--from", "1", "--to", "2.5");
    const part = await contentOf("part.csv");
    expect(part.map(({ name }) => name)).toEqual(["accel_z", "accel_x"]);
    const kept = whole?.times.flatMap((time, k) => (time >= 1 && time <= 2.5 ? [whole.values[k]] : []));
    expect(part[1]?.values).toEqual(kept);
    expect(part[1]?.times[0]).toBe(1);
  });

  it("keeps channels on clocks of their own in a table, and brings those of one clock under one column of times", async () => {
    await converted("two-clocks.csv", "-o", "two.tsv");
    expect(readFileSync(program.path("two.tsv"), "utf8").split("\n")[0]).toBe(
      "time_s\taccel_x_ms2\taccel_z_ms2\ttacho_propeller_shaft\tclock2_time_s\tspeed_mps",
    );
    const wav = await converted("drive.csv", "-o", "even.wav");
    writeFileSync(
      program.path("even.json"),
      readFileSync(program.path("case.json"), "utf8").replace("{", `{ "recordings": [${JSON.stringify(wav.recording)}],`),
    );
    await converted("even.wav", "-o", "even.uff", "--case", "even.json");
    await converted("even.uff", "-o", "even.csv");
    expect(readFileSync(program.path("even.csv"), "utf8").split("\n")[0]).toBe("time_s,accel_x_ms2,accel_z_ms2,tacho_propeller_shaft");
  });

  it("keeps the full scale and the bits of a sound file, and what the case says of the drive", async () => {
    const wav = await converted("drive.csv", "-o", "sixteen.wav", "--encoding", "pcm16", "--full-scale", "16", "--channel", "accel_z");
    expect(wav.recording).toEqual({ file: "sixteen.wav", channels: [{ id: "channel_1", name: "accel_z", unit: "m/s^2", fullScale: 16 }] });
    const known = { ...wav.recording, gear: "5", pulsesPerTurn: 2, filterHz: 200 };
    writeFileSync(
      program.path("sixteen.json"),
      readFileSync(program.path("case.json"), "utf8").replace("{", `{ "recordings": [${JSON.stringify(known)}],`),
    );
    const again = await converted("sixteen.wav", "-o", "again.wav", "--encoding", "pcm16", "--case", "sixteen.json");
    expect(again.recording).toEqual({ ...known, file: "again.wav" });
    expect(readFileSync(program.path("again.wav")).equals(readFileSync(program.path("sixteen.wav")))).toBe(true);
  });

  it("says in words what the case needs, and that a sound file begins at nought", async () => {
    const { code, out, err } = await convert("late.csv", "-o", "late.wav");
    expect([code, out]).toEqual([
      0,
      `late.wav written: accel_z.\nA sound file says neither names nor units. In the case, under recordings:\n${JSON.stringify(
        { file: "late.wav", channels: [{ id: "channel_1", name: "accel_z", unit: "m/s^2" }] },
        null,
        2,
      )}\n`,
    ]);
    expect(err).toMatch(/^The first sample was taken at 5\.000 s, and a sound file begins at 0:/);
    expect((await converted("late.csv", "-o", "late.wav")).startS).toBe(5);
    expect((await convert("late.csv", "-o", "tarde.wav", "--lang", "es")).out).toMatch(/^tarde\.wav escrito: accel_z\./);
  });

  it("writes the file whole or not at all, and over another one only when told so", async () => {
    const before = readFileSync(program.path("drive.csv"), "utf8");
    writeFileSync(program.path("there.csv"), "kept");
    expect(await convert("drive.csv", "-o", "there.csv")).toEqual({
      code: 2,
      out: "",
      err: "there.csv: is there already and was left alone; name another file, or add --force to overwrite it\n",
    });
    expect(readFileSync(program.path("there.csv"), "utf8")).toBe("kept");
    writeFileSync(program.path("broken.csv"), `${before.split("\n").slice(0, 2000).join("\n")}\n1,2,oops,0\n9,9,9,9\n`);
    const broken = await convert("broken.csv", "-o", "out.uff");
    expect([broken.code, broken.err.split("\n").length]).toEqual([2, 2]);
    expect(broken.err).toMatch(/"oops"/);
    expect(existsSync(program.path("out.uff"))).toBe(false);
    // A file may be written over the one that is read.
    writeFileSync(program.path("self.csv"), before);
    expect((await convert("self.csv", "-o", "self.csv", "--force", "--channel", "accel_z")).code).toBe(0);
    expect((await contentOf("self.csv")).map(({ values }) => values.length)).toEqual([3001]);
    expect(readdirSync(program.folder).filter((name) => name.endsWith(".tmp"))).toEqual([]);
  });
});

describe("convert refuses", () => {
  it.each([
    [
      "a name without a format",
      ["drive.csv", "-o", "a.mp3"],
      '--output: "a.mp3" does not say which format to write; let the name end in .wav, .csv, .tsv or .uff',
    ],
    ["no name", ["drive.csv"], "--output needs a value: write --output VALUE"],
    ["no recording", ["-o", "a.wav"], "RECORDING is missing; add it after the command"],
    ["a recording that is not there", ["nowhere.wav", "-o", "a.wav"], /^nowhere\.wav: there is no such file; (?!.*halfturn new)/],
    [
      "a case that is none",
      ["drive.csv", "-o", "a.wav", "--case", "nowhere.json"],
      /^nowhere\.json: there is no such file; .*halfturn new/,
    ],
    ["a folder that is not there", ["drive.csv", "-o", "no/where/a.csv"], /^no\/where\/a\.csv: /],
    [
      "a channel that is not there",
      ["drive.csv", "-o", "a.wav", "--channel", "accel_q"],
      /^drive\.csv: channel accel_q: there is no channel "accel_q"; there are: accel_x_ms2, /,
    ],
    [
      "a stretch beyond the end",
      ["drive.csv", "-o", "a.csv", "--from", "60"],
      /^drive\.csv: of one of the channels no sample lies between --from and --to/,
    ],
    [
      "a stretch beyond the end, for a sound file",
      ["drive.csv", "-o", "a.wav", "--from", "60"],
      /^drive\.csv: of one of the channels no sample lies/,
    ],
    [
      "a stretch that ends before it begins",
      ["drive.csv", "-o", "a.csv", "--from", "3", "--to", "2"],
      "--to: the stretch ends before it begins; let --to be larger than --from",
    ],
    [
      "a time that is none",
      ["drive.csv", "-o", "a.csv", "--from", "-1"],
      '--from: "-1" is no number of seconds from 0 up; write one such as 12.5',
    ],
    [
      "a full scale that is none",
      ["drive.csv", "-o", "a.wav", "--full-scale", "0"],
      '--full-scale: "0" is no number above 0; write one such as 20',
    ],
    [
      "a full scale that is too small",
      ["drive.csv", "-o", "a.wav", "--full-scale", "0.5"],
      /^--full-scale: "accel_x_ms2" reaches \d\.\d+, which is more than 0\.500; give a larger one, leave it out, or write --encoding float32\n$/,
    ],
    [
      "a full scale of a table",
      ["drive.csv", "-o", "a.csv", "--full-scale", "5"],
      "--full-scale: only a WAV has a full scale; leave it out, or let --output end in .wav",
    ],
    [
      "a decimal comma in a sound file",
      ["drive.csv", "-o", "a.wav", "--decimal", "comma"],
      "--decimal: only a table has a decimal sign; leave it out, or let --output end in .csv or .tsv",
    ],
    [
      "an encoding of another format",
      ["drive.csv", "-o", "a.uff", "--encoding", "pcm16"],
      "--encoding: a uff is not written as pcm16; write text or binary",
    ],
    [
      "several clocks in a sound file",
      ["two-clocks.csv", "-o", "a.wav"],
      /^two-clocks\.csv: the recording: WAV cannot hold channels on several clocks; /,
    ],
    [
      "a rate that a sound file cannot say",
      ["jitter.csv", "-o", "a.wav"],
      /^jitter\.csv: the recording: WAV cannot hold samples at uneven times or at a rate that is no whole number; /,
    ],
  ])("%s: exit 2, one line, and no file", async (_, args, says) => {
    const { code, out, err } = await convert(...args);
    expect([code, out]).toEqual([2, ""]);
    if (typeof says === "string") expect(err).toBe(`${says}\n`);
    else expect(err).toMatch(says);
    expect(err.split("\n")).toHaveLength(2);
    expect(readdirSync(program.folder).filter((name) => /^a\.|\.tmp$/.test(name))).toEqual([]);
  });
});
