import { describe, expect, it } from "vitest";
import { memorySource } from "../bytes/byte-source.js";
import { encodeText } from "../bytes/decode-text.js";
import { openRecording } from "../open-recording.js";
import { opened, readAll } from "../recording-contract.test-support.js";

const table = (text: string): Promise<Awaited<ReturnType<typeof opened>>> => opened(encodeText(text));

async function faultOf(text: string): Promise<unknown> {
  const recording = await openRecording(memorySource(encodeText(text)));
  if (!recording.ok) return recording;
  for await (const block of recording.value.read({ track: 0, channels: recording.value.tracks[0]?.channels.map((_, k) => k) ?? [] }))
    if (!block.ok) return block;
  return null;
}

const SAME = { times: [0, 0.5], values: [[1.5, -2]] };

describe("readCsv", () => {
  it.each([
    ["commas", "time_s,accel_z_ms2\n0,1.5\n0.5,-2\n"],
    ["semicolons and decimal commas", "time_s;accel_z_ms2\n0;1,5\n0,5;-2\n"],
    ["tabs", "time_s\taccel_z_ms2\n0\t1.5\n0.5\t-2\n"],
    ["tabs and decimal commas", "time_s\taccel_z_ms2\n0\t1,5\n0,5\t-2\n"],
    ["a byte order mark and Windows line ends", "\ufefftime_s,accel_z_ms2\r\n0,1.5\r\n0.5,-2\r\n"],
    ["no last line end", "time_s,accel_z_ms2\n0,1.5\n0.5,-2"],
    ["blanks, quotes and empty lines", 'time_s, "accel_z_ms2"\n\n "0" , 1.5\n0.5,"-2"\n\n'],
    ["a preamble and comments", "# logger 3\nserial: 17\ntime_s,accel_z_ms2\n0,1.5\n# half way\n0.5,-2\n"],
    ["the names in a comment", "# time_s,accel_z_ms2\n0,1.5\n0.5,-2\n"],
    ["units on a line of their own", "time,accel_z\ns,m/s^2\n0,1.5\n0.5,-2\n"],
    ["units in brackets on a line of their own", "time;accel_z\n(s);(m/s^2)\n0;1.5\n0.5;-2\n"],
    ["a separator that is announced", "sep=;\ntime_s;accel_z_ms2\n0;1.5\n0.5;-2\n"],
    ["separators at the end of lines", "time_s,accel_z_ms2,\n0,1.5,\n0.5,-2,\n"],
    ["milliseconds", "time_ms,accel_z_ms2\n0,1.5\n500,-2\n"],
  ])("reads %s", async (_, text) => {
    const recording = await table(text);
    expect(recording.tracks[0]?.channels[0]).toMatchObject({ quantity: "acceleration" });
    expect(await readAll(recording)).toMatchObject(SAME);
  });

  it.each([
    ["words beside the numbers", "time_s,accel_z_ms2,note\n0,1.5,start\n0.5,-2,\n"],
    ["settings above the names", "rate,100\ngain,2,dB\ntime_s,accel_z_ms2,x_g\n0,1.5,1\n0.5,-2,1\n"],
  ])("reads a column that has %s", async (_, text) => {
    const read: number[] = [];
    for await (const block of (await table(text)).read({ track: 0, channels: [0] }))
      if (block.ok) read.push(...(block.value.values[0] ?? []));
    expect(read).toEqual([1.5, -2]);
  });

  it("reads Latin-1 headings", async () => {
    const bytes = Uint8Array.from("time_s,accel (m/s\xb2)\n0,1.5\n0.5,-2\n", (letter) => letter.charCodeAt(0));
    const recording = await opened(bytes);
    expect(recording.tracks[0]?.channels[0]).toMatchObject({ unit: "m/s²", quantity: "acceleration" });
    expect(await readAll(recording)).toEqual(SAME);
  });

  it.each(["little", "big"])("reads a table in UTF-16, the %s end first", async (order) => {
    const text = "\ufefftime_s\taccel (m/s²)\tdeflection (μm)\tвибрация\r\n0\t1,5\t1\t0\r\n0,5\t-2\t2\t0\r\n";
    const bytes = new Uint8Array(2 * text.length);
    const view = new DataView(bytes.buffer);
    for (let k = 0; k < text.length; k++) view.setUint16(2 * k, text.charCodeAt(k), order === "little");
    const recording = await opened(bytes);
    expect(recording.tracks[0]?.channels.map(({ id, quantity }) => [id, quantity])).toEqual([
      ["accel (m/s²)", "acceleration"],
      ["deflection (µm)", "displacement"],
      ["????????", "unknown"],
    ]);
    expect(await readAll(recording, 0)).toMatchObject({
      times: [0, 0.5],
      values: [
        [1.5, -2],
        [1e-6, 2e-6],
        [0, 0],
      ],
    });
  });

  it("gives a column of speeds the clock to its left", async () => {
    const recording = await table("time_s,accel_z_ms2,gps_time_s,speed_kmh\n0,1,0.25,36\n0.5,2,1.25,72\n1,3,,\n1.5,4,,\n");
    expect(recording.tracks.map(({ channels }) => channels.map(({ id }) => id))).toEqual([["accel_z_ms2"], ["speed_kmh"]]);
    expect(await readAll(recording, 0)).toEqual({ times: [0, 0.5, 1, 1.5], values: [[1, 2, 3, 4]] });
    expect(await readAll(recording, 1)).toEqual({ times: [0.25, 1.25], values: [[10, 20]] });
  });

  it.each([
    ["2026-05-18T10:00:00.250Z", "2026-05-18T10:00:00.750Z"],
    ["2026-05-18 23:59:59.900", "2026-05-19 00:00:00.400"],
    ["10:00:00.250", "10:00:00.750"],
    ["9:59:59.900", "10:00:00.400"],
    ["10:00:00:250", "10:00:00:750"],
    ["12:59:59.900 PM", "1:00:00.400 PM"],
    ["11:59:59.900 am", "12:00:00.400 pm"],
    ["05/18/2026 23:59:59.9", "05/19/2026 00:00:00.4"],
    ["18/05/2026 23:59:59.9", "19/05/2026 00:00:00.4"],
    ["18.5.2026 23:59:59.9", "19.5.2026 00:00:00.4"],
    ["59:59.9", "60:00.4"],
  ])("reads moments as times: %s", async (first, second) => {
    const { times, values } = await readAll(await table(`timestamp,accel_z_ms2\n${first},1.5\n"${second}",-2\n`));
    expect(values).toEqual([[1.5, -2]]);
    // A double holds seconds since 1970 to some 2e-7.
    expect(Math.abs((times[1] ?? 0) - (times[0] ?? 0) - 0.5)).toBeLessThan(1e-6);
  });

  it("reads moments with a decimal comma, and in another zone", async () => {
    const { times } = await readAll(await table("timestamp;accel_z_ms2\n2026-05-18T12:00:00,5+02:00;1,5\n2026-05-18T10:00:01,5Z;2\n"));
    expect(times).toEqual([Date.UTC(2026, 4, 18, 10) / 1000 + 0.5, Date.UTC(2026, 4, 18, 10) / 1000 + 1.5]);
  });

  it.each(["time,1779098400000", "timestamp,1779098400000000", "time,1779098400000000000"])(
    "reads a clock that counts parts of seconds since 1970: %s",
    async (clock) => {
      const [heading = "", start = ""] = clock.split(",");
      const half = String(BigInt(start) + BigInt(5 * 10 ** (start.length - 11)));
      const { times } = await readAll(await table(`${heading},accel_z_ms2\n${start},1.5\n${half},-2\n`));
      expect(times[0]).toBe(Date.UTC(2026, 4, 18, 10) / 1000);
      // A double holds seconds since 1970 to some 2e-7.
      expect(Math.abs((times[1] ?? 0) - (times[0] ?? 0) - 0.5)).toBeLessThan(1e-6);
    },
  );

  it.each([
    ["seconds_elapsed", "0.5"],
    ["Seconds", "0.5"],
    ["elapsed_ms", "500"],
    ["ms_elapsed", "500"],
    ["Time elapsed (ms)", "500"],
    ["ms", "500"],
    ["Date/Time", "0.5"],
  ])("takes %s for a time", async (heading, half) => {
    expect(await readAll(await table(`${heading},accel_z_ms2\n0,1.5\n${half},-2\n`))).toEqual(SAME);
  });

  it("takes a column of moments for the time where none is called so", async () => {
    const recording = await table("clock,accel_z_ms2\n10:00:00.250,1.5\n10:00:00.750,-2\n");
    expect((await readAll(recording)).times).toEqual([36000.25, 36000.75]);
    const told = await table("time_s,seen,accel_z_ms2\n0,10:00:00.250,1.5\n0.5,10:00:00.750,-2\n");
    expect(told.tracks.map(({ channels }) => channels.map(({ id }) => id))).toEqual([["seen", "accel_z_ms2"]]);
  });

  it("tells columns of one name apart by a number", async () => {
    const recording = await table("time_s,Accel (m/s2),Accel (m/s2),x,x\n0,1.5,3,5,7\n0.5,-2,4,6,8\n");
    expect(recording.tracks[0]?.channels.map(({ id, quantity }) => [id, quantity])).toEqual([
      ["Accel (m/s2)", "acceleration"],
      ["Accel (m/s2) #2", "acceleration"],
      ["x", "unknown"],
      ["x #2", "unknown"],
    ]);
    expect((await readAll(recording)).values.map((values) => values[0])).toEqual([1.5, 3, 5, 7]);
  });

  it("gives missing values as none", async () => {
    const recording = await table("time_s,accel_z_ms2,speed_kmh\n0,1,36\n0.5,,\n1,NaN,n/a\n1.5,4,72\n");
    expect(await readAll(recording)).toEqual({
      times: [0, 0.5, 1, 1.5],
      values: [
        [1, Number.NaN, Number.NaN, 4],
        [10, Number.NaN, Number.NaN, 20],
      ],
    });
  });

  it("leaves out a last line that broke off, and says so", async () => {
    const recording = await table("time_s,accel_z_ms2,x_g\n0,1,1\n0.5,2,1\n1,3");
    const notes: string[] = [];
    for await (const block of recording.read({ track: 0, channels: [0] }))
      if (block.ok) notes.push(...block.value.notes.map(({ code, path }) => `${code} ${path}`));
    expect((await readAll(recording)).times).toEqual([0, 0.5]);
    expect(notes).toEqual(["recording.last-line-broke-off line 4"]);
  });

  it.each([
    ["", "recording.empty", ""],
    ["\n\n", "recording.empty", ""],
    ["hello\nworld\n", "recording.no-samples", ""],
    ["accel_z_ms2,speed_kmh\n1,2\n", "recording.no-time", ""],
    ["0,1\n1,2\n", "recording.no-column-names", "line 1"],
    ["a,b\n0,1,2\n1,2,3\n", "recording.no-column-names", "line 2"],
    ["time_s,x_g\n0,1\n1,2\n2,oops\n3,4\n", "recording.not-a-number", "line 4"],
    ["time_s,x_g\n0,1\n1,2\n2\n3,4\n", "recording.columns-differ", "line 4"],
    ["time_s,x_g\n0,1\n1,2\n2,1,7\n3,4\n", "recording.columns-differ", "line 4"],
    ["time_s\n0\n1\n", "recording.no-samples", ""],
    [`time_s,x_g\n0,1\n${"9".repeat(3_000_000)}`, "recording.line-too-long", "line 3"],
  ])("refuses %j", async (text, code, path) => {
    expect(await faultOf(text)).toMatchObject({ ok: false, code, path });
  });

  it("says which cell is no number", async () => {
    expect(await faultOf("time_s,x_g\n0,1\n1,fast\n2,2\n")).toMatchObject({ params: { line: 3, column: "x_g", found: "fast" } });
  });
});
