import { describe, expect, it } from "vitest";
import type { ByteSource } from "./bytes/byte-source.js";
import { encodeText } from "./bytes/decode-text.js";
import { bytesOf, opened, recordingOf } from "./recording-contract.test-support.js";
import { writeUff } from "./uff/write-uff.js";
import { writeWav } from "./wav/write-wav.js";

const MEGABYTE = 2 ** 20;
/** Far more than a reader may hold at once. */
const SIZE = 200 * MEGABYTE;
/** Several stretches, and what a collector has not come to yet. */
const MOST_HELD = 80 * MEGABYTE;

/** A file that is nowhere: a head, then one period of bytes over and over, then a tail. */
function endlessSource(head: Uint8Array, period: Uint8Array, tail: Uint8Array, size: number): ByteSource {
  const middle = Math.floor((size - head.length - tail.length) / period.length) * period.length;
  const end = head.length + middle;
  return {
    size: end + tail.length,
    read: async (offset, length) => {
      const bytes = new Uint8Array(Math.max(0, Math.min(length, end + tail.length - offset)));
      for (let k = 0; k < bytes.length; ) {
        const at = offset + k;
        const [from, start] = at < head.length ? [head, at] : at < end ? [period, (at - head.length) % period.length] : [tail, at - end];
        const part = from.subarray(start, Math.min(from.length, start + bytes.length - k));
        bytes.set(part, k);
        k += part.length;
      }
      return bytes;
    },
  };
}

async function reading(source: ByteSource): Promise<{ readonly samples: number; readonly held: number }> {
  const recording = await opened(source);
  const before = process.memoryUsage().rss;
  let [samples, held] = [0, 0];
  for await (const block of recording.read({ track: 0, channels: [0] })) {
    if (!block.ok) throw new Error(`${block.code} ${JSON.stringify(block.params)}`);
    samples += block.value.values[0]?.length ?? 0;
    held = Math.max(held, process.memoryUsage().rss - before);
  }
  return { samples, held };
}

const nothing = new Uint8Array(0);

describe("200 MB are read in bounded memory", () => {
  it("from a sound file", async () => {
    const file = await bytesOf(writeWav(recordingOf(1000, [Float64Array.of(1)]), { encoding: "pcm16", fullScale: 2 }));
    const head = file.slice(0, file.length - 2);
    // A length that was left open is read to the end.
    new DataView(head.buffer).setUint32(head.length - 4, 0xffff_ffff, true);
    const { samples, held } = await reading(endlessSource(head, Uint8Array.of(0, 64, 0, 192), nothing, SIZE));
    expect(samples).toBe(Math.floor((SIZE - head.length) / 4) * 2);
    expect(held).toBeLessThan(MOST_HELD);
  });

  it("from a table", async () => {
    // Every row has the same time, which is a clock's affair and not the reader's.
    const row = encodeText("0.001,-1.25\n");
    const { samples, held } = await reading(endlessSource(encodeText("time_s,accel_z_ms2\n"), row, nothing, SIZE));
    expect(samples).toBe(Math.floor((SIZE - 19) / row.length));
    expect(held).toBeLessThan(MOST_HELD);
  });

  it("from a universal file", async () => {
    const line = encodeText(`${"1.250000000000E+00".padStart(20).repeat(4)}\n`);
    const size = SIZE / 2;
    const values = Math.floor(size / line.length) * 4;
    const file = await bytesOf(writeUff(recordingOf(1000, [Float64Array.of(1)]), { kind: "text" }));
    // Thirteen lines are the head; the eighth after its mark and tag says how many values follow.
    const lines = String.fromCharCode(...file)
      .split("\n")
      .slice(0, 13);
    const counted = lines.with(8, (lines[8] as string).replace(/^(.{10}).{10}/, `$1${String(values).padStart(10)}`));
    const head = encodeText(`${counted.join("\n")}\n`);
    const whole = head.length + (values / 4) * line.length + 7;
    const { samples, held } = await reading(endlessSource(head, line, encodeText("    -1\n"), whole));
    expect(samples).toBe(values);
    expect(held).toBeLessThan(MOST_HELD);
  });
});
