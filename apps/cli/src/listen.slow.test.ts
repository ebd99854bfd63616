import { readFileSync, writeFileSync } from "node:fs";
import type { AttributionJson, ContributionJson } from "@halfturn/casefile";
import { writeCsv, writeUff, writeWav } from "@halfturn/recordings";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { buildProgram, type Program } from "./program.test-support.js";
import { drive, firstTrackOf, recordingOf, writeFile } from "./road-test.test-support.js";

const FULL_SCALE = 16;

let program: Program;
beforeAll(async () => {
  program = await buildProgram();
  program.example("two-piece", "case.json");
  program.broken("with-recording.json", (document) => {
    document.recordings = [
      {
        file: "drive.wav",
        gear: "5",
        channels: [
          { id: "channel_1", name: "accel_x", unit: "m/s^2", fullScale: FULL_SCALE },
          { id: "channel_2", name: "accel_z", unit: "m/s^2", fullScale: FULL_SCALE },
          { id: "channel_3", name: "tacho_propeller_shaft" },
        ],
      },
    ];
  });
  program.broken("quiet.json", (document) => delete document.complaint);
  program.broken("no-tyre.json", ({ vehicle }) => delete vehicle.tyre);
  const recording = recordingOf(drive());
  const path = (name: string): string => program.path(name);
  await writeFile(path("drive.csv"), writeCsv(recording, { separator: ",", decimal: "." }));
  await writeFile(path("drive-comma.txt"), writeCsv(recording, { separator: ";", decimal: "," }));
  await writeFile(path("drive.uff"), writeUff(recording, { kind: "text" }));
  await writeFile(path("drive-58b.uff"), writeUff(recording, { kind: "binary", littleEndian: false }));
  await writeFile(path("drive.wav"), writeWav(firstTrackOf(recording), { encoding: "pcm24", fullScale: FULL_SCALE }));
  await writeFile(path("mislabelled.wav"), writeCsv(recording, { separator: "\t", decimal: "." }));
}, 60_000);
afterAll(() => program.remove());

const listen = async (...args: string[]): Promise<AttributionJson> => {
  const { code, out, err } = await program.run(["listen", ...args, "--json", ...(args.includes(KNOWN) ? [] : ["--gear", "5"])]);
  expect([code, err]).toEqual([0, ""]);
  return JSON.parse(out);
};
/** This case says the gear of the recording itself. */
const KNOWN = "with-recording.json";
const found = ({ contributions }: AttributionJson, part: string, order: number): ContributionJson | undefined =>
  contributions.find((one) => one.part === part && one.order === order);

/** The estimate carries its own uncertainty, of which noise of 0.3 m/s^2 over 40 s leaves less than a hundredth. */
const AMPLITUDE = 0.03;
const shaftVerdict = { part: "propeller-shaft", order: 1 };

describe("listen --json", () => {
  it.each([
    ["a table", "drive.csv"],
    ["a table with decimal commas", "drive-comma.txt"],
    ["a universal file in text", "drive.uff"],
    ["a universal file in bytes", "drive-58b.uff"],
    ["a table that calls itself a sound file", "mislabelled.wav"],
  ])("names the propeller shaft's first order from %s, by its pulses", async (_, file) => {
    const heard = await listen(file, "--case", "case.json");
    expect(heard).toMatchObject({ format: "halfturn-attribution", version: 1, verdict: shaftVerdict, speedCorrection: null });
    expect(heard.verdict?.probability).toBeGreaterThan(0.9);
    expect(Math.abs((found(heard, "propeller-shaft", 1)?.amplitudeMS2?.value ?? 0) - 1)).toBeLessThan(AMPLITUDE);
    expect(Math.abs((found(heard, "wheel", 1)?.amplitudeMS2?.value ?? 0) - 0.2)).toBeLessThan(AMPLITUDE);
    expect(heard.channel).toMatch(/^accel_z/);
  });

  it("reads a sound file by what the case says of it: full scale, names, tachometer and gear", async () => {
    const heard = await listen("drive.wav", "--case", KNOWN);
    expect(heard.verdict).toMatchObject(shaftVerdict);
    expect(Math.abs((found(heard, "propeller-shaft", 1)?.amplitudeMS2?.value ?? 0) - 1)).toBeLessThan(AMPLITUDE);
    // In gear 5 the engine turns more slowly than the shaft.
    const [low, high] = found(heard, "engine", 1)?.frequencyHz ?? [0, 0];
    const [shaftLow, shaftHigh] = found(heard, "propeller-shaft", 1)?.frequencyHz ?? [0, 0];
    for (const ratio of [low / shaftLow, high / shaftHigh]) expect(Math.abs(ratio / 0.77 - 1)).toBeLessThan(1e-6);
  });

  it("goes by a road speed, from the recording or from a file of its own", async () => {
    const own = await listen("drive.csv", "--case", "case.json", "--speed-from", "speed_mps", "--channel", "accel_z_ms2");
    expect(own.verdict).toMatchObject(shaftVerdict);
    const { log } = drive();
    const rows = [...(log?.times ?? [])].map((time, k) => `${time};${((log?.speeds[k] ?? 0) * 3.6).toFixed(3).replace(".", ",")}`);
    writeFileSync(program.path("gps.csv"), `time_s;speed_kmh\n${rows.join("\n").replaceAll(/^(\d+)\.(\d+)/gm, "$1,$2")}\n`);
    const other = await listen("drive.csv", "--case", "case.json", "--speed-file", "gps.csv");
    expect(other.verdict).toMatchObject(shaftVerdict);
    expect(other.channel).toBe("accel_z_ms2");
  });

  it("names none of two orders that are one in the gear driven, and says that another gear parts them", async () => {
    const direct = await program.run(["listen", "drive.csv", "--case", "case.json", "--json"]);
    const heard: AttributionJson = JSON.parse(direct.out);
    expect([direct.code, heard.verdict]).toEqual([0, null]);
    expect(heard.abstained).toEqual({ reason: "coincidence", between: [shaftVerdict, { part: "engine", order: 1 }] });
    expect(heard.coincidences.map(({ partedByGear }) => partedByGear)).toContain(true);
  });

  it("follows the speed in the vibration itself where no column tells it, within the complaint, and says so", async () => {
    const rows = readFileSync(program.path("drive.csv"), "utf8").split("\n");
    writeFileSync(program.path("phone.csv"), rows.map((row) => row.split(",").slice(0, 3).join(",")).join("\n"));
    const heard = await listen("phone.csv", "--case", "case.json");
    expect(heard.verdict).toMatchObject(shaftVerdict);
    expect(heard.findings[0]).toMatchObject({ code: "recording.speed-followed", params: { part: "propeller-shaft", order: 1 } });
  });

  it("prints the same bytes in every language, and again", async () => {
    const args = ["listen", "drive.csv", "--case", "case.json", "--json"];
    const first = await program.run(args);
    expect(await program.run([...args, "--lang", "es"], { env: { FORCE_COLOR: "1" } })).toEqual(first);
  });

  it("works on what a sound file tells when the case does not know it: which part, and no sizes", async () => {
    const gps = "--speed-file";
    const heard = await listen("drive.wav", "--case", "case.json", "--channel", "channel_2", gps, "drive.csv", "--speed-from", "speed_mps");
    expect(heard.verdict).toMatchObject(shaftVerdict);
    expect(heard.contributions.every(({ amplitudeMS2 }) => amplitudeMS2 === null)).toBe(true);
    expect(heard.findings.map(({ code }) => code)).toContain("recording.no-full-scale");
    expect(heard.findings.map(({ code }) => code)).not.toContain("attribution.sound-only");
  });
});

describe("listen for people", () => {
  it("says the verdict, what it rests on, what cannot be seen, and that the driver never operates the tool", async () => {
    const { code, out, err } = await program.run(["listen", "drive.csv", "--case", "case.json", "--gear", "5"]);
    expect([code, err]).toEqual([0, ""]);
    expect(out).toContain("Verdict: The propeller shaft's first order");
    expect(out).toMatch(/Propeller shaft +1 +30\.\d to 40\.\d +(?:0\.9|1\.0)\d+ ± 0\.0\d+/);
    expect(out).toContain("On a road test the driver drives.");
    expect(out).not.toMatch(/undefined|NaN|\[object/);
    for (const line of out.split("\n")) expect(line.length).toBeLessThanOrEqual(80);
  });

  it("says it in Spanish", async () => {
    const { out } = await program.run(["listen", "drive.csv", "--case", "case.json", "--gear", "5", "--lang", "es"]);
    expect(out).toContain("Veredicto: El primer orden del árbol de transmisión");
    expect(out).not.toMatch(/\b(the|and|of|with)\b/);
  });

  it("says what a slow sensor cannot show, and why that rules nothing out", async () => {
    const slow = recordingOf(
      drive({ sensor: { rate: 100, filter: null, noise: 0.01, offset: 0, drift: 0, fullScale: null, resolution: 0 } }),
    );
    await writeFile(program.path("slow.csv"), writeCsv(slow, { separator: ",", decimal: "." }));
    const { code, out } = await program.run(["listen", "slow.csv", "--case", "case.json", "--speed-from", "speed_mps"]);
    expect(code).toBe(0);
    expect(out).toContain("What this recording cannot show");
    expect(out).toContain("rules nothing out");
    expect(out).toMatch(/The propeller shaft's fourth order: \d+ to \d+ Hz; would show near \d+ Hz/);
  });
});

describe("listen on a recording that is not whole", () => {
  it("works on the longest stretch without a gap, and says what was lost", async () => {
    const rows = readFileSync(program.path("drive.csv"), "utf8").trimEnd().split("\n");
    // Half a second of samples lost at 5 s, and a sample without a value.
    const lossy = [...rows.slice(0, 2500), ...rows.slice(2750)].map((row, k) =>
      k === 9000 ? row.replace(/^([^,]*),[^,]*,[^,]*/, "$1,,") : row,
    );
    writeFileSync(program.path("lossy.csv"), `${lossy.join("\n")}\n`);
    const heard = await listen("lossy.csv", "--case", "case.json");
    expect(heard.verdict).toMatchObject(shaftVerdict);
    const gaps = heard.findings.find(({ code }) => code === "recording.gaps");
    expect(gaps?.params).toMatchObject({ count: 1 });
    expect(Math.abs(Number(gaps?.params.lostS) - 0.502)).toBeLessThan(1e-6);
    expect(heard.findings.map(({ code }) => code)).toContain("recording.values-missing");
    expect(Math.abs(heard.durationS - 34.5)).toBeLessThan(0.1);
  });

  it("goes by an engine's speed in the gear driven", async () => {
    const { log } = drive();
    const perMetre = (60 * 3.73 * 0.77) / 2.42;
    const rows = [...(log?.times ?? [])].map((time, k) => `${time},${((log?.speeds[k] ?? 0) * perMetre).toFixed(1)}`);
    writeFileSync(program.path("bus.csv"), `time_s,engine_rpm\n${rows.join("\n")}\n`);
    const heard = await listen("drive.csv", "--case", "case.json", "--speed-file", "bus.csv");
    expect(heard.verdict).toMatchObject(shaftVerdict);
  });
});

describe("listen --figure", () => {
  it("draws what was heard in the language of the words, whole or not at all", async () => {
    const base = ["listen", "drive.csv", "--case", "case.json", "--gear", "5"];
    const { code, err } = await program.run([...base, "--figure", "heard.svg"]);
    expect([code, err]).toEqual([0, "heard.svg written.\n"]);
    const svg = readFileSync(program.path("heard.svg"), "utf8");
    expect(svg).toMatch(/^<svg [^>]*aria-label="How hard it shook, by order"/);
    for (const name of ["Shaft 1", "Wheel 1", "the verdict"]) expect(svg).toContain(`>${name}</text>`);
    await program.run([...base, "--figure", "oido.svg", "--lang", "es"]);
    expect(readFileSync(program.path("oido.svg"), "utf8")).toContain("Árbol 1");
    const refused = await program.run([...base, "--figure", "nowhere/heard.svg"]);
    expect([refused.code, refused.out]).toEqual([2, ""]);
    expect(refused.err).toMatch(/nowhere\/heard\.svg: the folder is not there/);
  });

  it("marks where an order above half the sampling rate would show", async () => {
    const sensor = { rate: 100, filter: null, noise: 0.01, offset: 0, drift: 0, fullScale: null, resolution: 0 };
    await writeFile(program.path("slow-drawn.csv"), writeCsv(recordingOf(drive({ sensor })), { separator: ",", decimal: "." }));
    const args = ["slow-drawn.csv", "--case", "case.json", "--gear", "5", "--speed-from", "speed_mps", "--figure", "slow.svg"];
    expect((await program.run(["listen", ...args])).code).toBe(0);
    expect(readFileSync(program.path("slow.svg"), "utf8")).toContain("folded back");
  });
});

describe("listen --keep", () => {
  it("writes what was heard into the case, beside the recording, and nothing else", async () => {
    program.example("two-piece", "kept.json");
    const before = JSON.parse(readFileSync(program.path("kept.json"), "utf8"));
    const args = ["listen", "drive.csv", "--case", "kept.json", "--gear", "5", "--keep"];
    const { code, err } = await program.run(args);
    expect([code, err]).toEqual([0, "Kept in kept.json, under recordings.\n"]);
    const { recordings, updatedAt, ...rest } = JSON.parse(readFileSync(program.path("kept.json"), "utf8"));
    const { recordings: _none, updatedAt: _then, ...expected } = before;
    expect(rest).toEqual(expected);
    expect(updatedAt).toMatch(/^20/);
    expect(recordings).toHaveLength(1);
    expect(recordings[0]).toMatchObject({
      file: "drive.csv",
      heard: { gear: "5", verdict: shaftVerdict, speedFrom: "tacho_propeller_shaft" },
    });
    expect((await program.run(["validate", "kept.json"])).code).toBe(0);
    await program.run(args);
    expect(JSON.parse(readFileSync(program.path("kept.json"), "utf8")).recordings).toHaveLength(1);
  });

  it("does not take a case from standard input", async () => {
    const { code, err } = await program.run(["listen", "drive.csv", "--case", "-", "--keep"]);
    expect([code, err]).toEqual([2, "--keep: standard input cannot be written back; name a case file\n"]);
  });
});

describe("listen to a vibration velocity", () => {
  it("names the order, with the acceleration that it is", async () => {
    // 2 mm/s of the propeller shaft's first order, at 31 to 39 turns a second.
    let [turns, state] = [0, 1];
    const lines = Array.from({ length: 12_000 }, (_, k) => {
      const speed = 20 + k / 2400;
      turns += (speed * 3.73) / 2.42 / 400;
      state = (state * 48_271) % 2_147_483_647;
      return `${k / 400},${(2 * Math.cos(2 * Math.PI * turns) + state / 2_147_483_647 - 0.5).toFixed(5)},${k % 200 === 0 ? (speed * 3.6).toFixed(3) : ""}`;
    });
    writeFileSync(program.path("velocity.csv"), `time_s,vel_z_mms,speed_kmh\n${lines.join("\n")}\n`);
    const args = ["velocity.csv", "--case", "case.json", "--gear", "5"];
    const { code, out } = await program.run(["listen", ...args, "--json", "--figure", "velocity.svg"]);
    expect(code).toBe(0);
    const json: AttributionJson = JSON.parse(out);
    // Half of what it shakes, in its own unit.
    expect(/Darkest: from ([^;]*);/.exec(readFileSync(program.path("velocity.svg"), "utf8"))?.[1]).toBe("1.0 mm/s");
    expect(json.verdict).toMatchObject(shaftVerdict);
    expect(json.findings.map(({ code }) => code)).toContain("attribution.differentiated");
    const frequency = (22.5 * 3.73) / 2.42;
    const amplitude = found(json, "propeller-shaft", 1)?.amplitudeMS2?.value ?? Number.NaN;
    expect(Math.abs(amplitude / (0.002 * 2 * Math.PI * frequency) - 1)).toBeLessThan(AMPLITUDE);
  });
});

describe("listen to a sound file that nobody described", () => {
  it("hears the same of it once it is a table", async () => {
    const args = ["--case", "quiet.json", "--channel", "CHANNEL", "--speed-file", "drive.csv", "--speed-from", "speed_mps"];
    const heard = (file: string, channel: string) => listen(file, ...args.map((one) => one.replace("CHANNEL", channel)));
    await program.run(["convert", "drive.wav", "-o", "undescribed.csv"]);
    const [sound, table] = [await heard("drive.wav", "channel_2"), await heard("undescribed.csv", "channel_2_fs")];
    expect(table.verdict).toMatchObject(shaftVerdict);
    expect(table.verdict?.part).toBe(sound.verdict?.part);
    for (const json of [sound, table]) expect(json.findings.map(({ code }) => code)).toContain("recording.no-full-scale");
  });
});

describe("listen refuses", () => {
  const refusal = async (...args: string[]): Promise<readonly [number | null, string]> => {
    const { code, out, err } = await program.run(["listen", ...args]);
    expect(out).toBe("");
    expect(err.trimEnd().split("\n")).toHaveLength(1);
    return [code, err];
  };

  it.each([
    ["missing.csv", ["missing.csv"], /missing\.csv: there is no such file; check the name and the folder of the recording$/m],
    ["a folder", ["."], /\.: is a folder/],
    ["what is no file", ["/dev/null"], /\/dev\/null: cannot be read \(ESPIPE\)/],
    ["an empty file", ["empty.csv"], /the file is empty/],
    ["a file of another kind", ["noise.bin"], /no recording that is known here/],
    ["a sound file that is cut short", ["cut.wav"], /byte \d+: the file is cut short: its header promises/],
    ["a table with a word in it", ["word.csv"], /line 3: "oops" in column "accel_z_ms2" is no number/],
    ["an unknown channel", ["drive.csv", "--channel", "accel_q"], /there is no channel "accel_q"; there are: accel_x_ms2, /],
    ["a channel that is no vibration", ["drive.csv", "--channel", "speed_mps"], /"speed_mps" is mps and would have to be/],
    ["an unknown speed column", ["drive.csv", "--speed-from", "spd"], /there is no channel "spd"/],
    ["a speed column that is none", ["drive.csv", "--speed-from", "accel_z_ms2"], /--speed-from: "accel_z_ms2" is no speed/],
    [
      "a missing speed file",
      ["drive.csv", "--speed-file", "gone.csv"],
      /gone\.csv: there is no such file; check the name and the folder of the recording$/m,
    ],
    ["an unknown gear", ["drive.csv", "--gear", "9"], /--gear: there is no gear "9"/],
    ["a tachometer on nothing that turns", ["turbine.csv"], /tachometer on "turbine", which does not turn on this vehicle/],
    ["a picture of an unknown kind", ["drive.csv", "--figure", "out.png"], /--figure: "out.png" does not end in \.svg/],
  ])("%s with exit 2 and one line", async (_, args, says) => {
    writeFileSync(program.path("empty.csv"), "");
    writeFileSync(
      program.path("noise.bin"),
      Uint8Array.from({ length: 300 }, (_, k) => (k * 37) % 256),
    );
    writeFileSync(program.path("cut.wav"), readFileSync(program.path("drive.wav")).subarray(0, 5000));
    writeFileSync(program.path("word.csv"), "time_s,accel_z_ms2,speed_kmh\n0,1,90\n0.01,oops,90\n0.02,1,90\n");
    const table = readFileSync(program.path("drive.csv"), "utf8").replace("tacho_propeller_shaft", "tacho_turbine");
    writeFileSync(program.path("turbine.csv"), table);
    const [code, err] = await refusal(...args, "--case", "case.json");
    expect(code).toBe(2);
    expect(err).toMatch(says);
  });

  it.each([
    ["a recording without any speed", ["still.csv", "--case", "quiet.json"], /no column tells how fast anything turned; add one/],
    ["a recording without any speed, and nothing to follow", ["hiss.csv", "--case", "case.json"], /no order stands out clearly enough/],
    ["a case without a tyre", ["drive.csv", "--case", "no-tyre.json"], /vehicle\.tyre.*is missing/],
    ["a vehicle that stands", ["standing.csv", "--case", "case.json"], /standing\.csv: /],
  ])("%s with exit 1 and one line", async (_, args, says) => {
    const rows = Array.from({ length: 400 }, (_, k) => `${k / 100},${Math.sin(k)}`);
    // A congruential generator: noise without a line in it, the same each time.
    let state = 1;
    const hiss = Array.from({ length: 2000 }, (_, k) => {
      state = (state * 48_271) % 2_147_483_647;
      return `${k / 100},${state / 2_147_483_647 - 0.5}`;
    });
    writeFileSync(program.path("hiss.csv"), `time_s,accel_z_ms2\n${hiss.join("\n")}\n`);
    writeFileSync(program.path("still.csv"), `time_s,accel_z_ms2\n${rows.join("\n")}\n`);
    writeFileSync(program.path("standing.csv"), `time_s,accel_z_ms2,speed_kmh\n${rows.map((row) => `${row},0`).join("\n")}\n`);
    const [code, err] = await refusal(...args);
    expect(code).toBe(1);
    expect(err).toMatch(says);
  });

  it("a case that is none, or not named", async () => {
    expect((await refusal("drive.csv", "--case", "gone.json"))[0]).toBe(2);
    expect((await program.run(["listen", "drive.csv"])).code).toBe(2);
  });
});
