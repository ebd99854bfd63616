import { execFileSync } from "node:child_process";
import { mkdirSync, readdirSync, readFileSync, statSync, utimesSync, writeFileSync } from "node:fs";
import { pathToFileURL } from "node:url";
import { writeCsv, writeWav } from "@halfturn/recordings";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { longDrive, writeLong } from "./long-drive.test-support.js";
import { buildProgram, type Program } from "./program.test-support.js";

const FULL_SCALE = 16;
const AS_WAV = { encoding: "pcm16", fullScale: FULL_SCALE } as const;
/** Of a table, whose rows are many times as long, a third of an hour shows the same. */
const TABLE_SECONDS = 1200;
const LONGEST = 300_000;

let program: Program;
beforeAll(async () => {
  program = await buildProgram();
  const named = (id: string, name: string) => ({ id, name, unit: "m/s^2", fullScale: FULL_SCALE });
  program.broken("case.json", (document) => {
    document.recordings = ["short.wav", "hour.wav"].map((file) => ({
      file,
      gear: "5",
      channels: [
        named("channel_1", "accel_x"),
        named("channel_2", "accel_y"),
        named("channel_3", "accel_z"),
        { id: "channel_4", name: "tacho_propeller_shaft" },
      ],
    }));
  });
  writeFileSync(
    program.path("peak.mjs"),
    'import { writeFileSync } from "node:fs"; process.on("exit", () => writeFileSync(process.env.PEAK, String(process.resourceUsage().maxRSS)));',
  );
  mkdirSync(program.path("room"));
  await writeLong(program.path("short.wav"), writeWav(longDrive(600), AS_WAV));
  await writeLong(program.path("hour.wav"), writeWav(longDrive(3600), AS_WAV));
  await writeLong(program.path("long.csv"), writeCsv(longDrive(TABLE_SECONDS), { separator: ",", decimal: "." }));
}, LONGEST);
afterAll(() => program.remove());

/** Most memory that the program ever held, MB, and what it said. */
async function listening(file: string): Promise<{ readonly peak: number; readonly verdict: unknown }> {
  const env = {
    NODE_OPTIONS: `--import=${pathToFileURL(program.path("peak.mjs")).href}`,
    PEAK: program.path("peak"),
    TMPDIR: program.path("room"),
  };
  const { code, out, err } = await program.run(["listen", file, "--case", "case.json", "--gear", "5", "--json"], { env });
  expect([code, err]).toEqual([0, ""]);
  return { peak: Number(readFileSync(program.path("peak"), "utf8")) / 1024, verdict: JSON.parse(out).verdict };
}

/** The folder has changed, since spools were made in it, and none is just being made: between a spool's making and its leaving nothing can help against SIGKILL. */
function spooling(room: string): boolean {
  const { mtimeMs } = statSync(room);
  return mtimeMs > 0 && Date.now() - mtimeMs > 100 && readdirSync(room).length === 0;
}

/** The samples of an hour are 472 MB as doubles, those of ten minutes 79 MB. */
const MOST_MB = 300;
const GROWTH_MB = 100;

describe("an hour of three axes and a tachometer at 4,096 Hz", () => {
  it(
    "is heard in the memory that ten minutes take, from a sound file and from a table",
    async () => {
      const short = await listening("short.wav");
      const hour = await listening("hour.wav");
      const table = await listening("long.csv");
      console.info(
        `${short.peak.toFixed(0)} MB for ten minutes, ${hour.peak.toFixed(0)} for an hour, ${table.peak.toFixed(0)} for a long table`,
      );
      for (const { peak, verdict } of [hour, table]) {
        expect(verdict).toMatchObject({ part: "propeller-shaft", order: 1 });
        expect(peak).toBeLessThan(MOST_MB);
        expect(peak - short.peak).toBeLessThan(GROWTH_MB);
      }
      expect(readdirSync(program.path("room"))).toEqual([]);
    },
    LONGEST,
  );

  it.each(["SIGINT", "SIGTERM", "SIGKILL"] as const)(
    "leaves nothing in the folder for temporary files when ended by %s",
    async (signal) => {
      const room = program.path("room");
      utimesSync(room, 0, 0);
      const child = program.start(["listen", "long.csv", "--case", "case.json", "--gear", "5"], { TMPDIR: room });
      let said = "";
      child.stderr.setEncoding("utf8").on("data", (text: string) => {
        said += text;
      });
      const closed = new Promise<number | null>((resolve) => child.on("close", resolve));
      while (!spooling(room)) await new Promise((resolve) => setTimeout(resolve, 20));
      child.kill(signal);
      expect([await closed, said]).toEqual(signal === "SIGKILL" ? [null, ""] : [130, "Stopped by hand. Nothing was written.\n"]);
      expect(readdirSync(room)).toEqual([]);
    },
  );

  it("says where there is no room for it, and what to do", async () => {
    const room = program.path("room");
    const tight = 'ulimit -f 4096; exec "$0" "$@"';
    const args = [process.execPath, program.file, "listen", "hour.wav", "--case", "case.json", "--lang"];
    const refused = (language: string): string => {
      try {
        execFileSync("sh", ["-c", tight, ...args, language], { cwd: program.folder, env: { ...process.env, TMPDIR: room }, stdio: "pipe" });
      } catch (error) {
        const { status, stderr } = error as { readonly status: number; readonly stderr: Buffer };
        return `${status} ${stderr.toString()}`;
      }
      return "read all the same";
    };
    expect(refused("en")).toBe(
      `1 hour.wav: is too long to be held in memory, and the folder for temporary files, ${room}, cannot take it (EFBIG); make room there, let TMPDIR (TEMP on Windows) name another folder, or cut the recording\n`,
    );
    expect(refused("es")).toMatch(/^1 hour\.wav: es demasiado larga .*EFBIG/);
    expect(readdirSync(room)).toEqual([]);
  });
});
