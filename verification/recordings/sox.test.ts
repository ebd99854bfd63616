import { readFile } from "node:fs/promises";
import { memorySource, openRecording } from "@halfturn/recordings";
import { describe, expect, it } from "vitest";

// Made and decoded by SoX 14.4.2: see make-sox-files.sh.
const folder = new URL("./sox/", import.meta.url);

/** SoX holds every sample in 32 bits, floats too. */
const SOX_RESOLUTION = 2 ** -31;

const FILES = [
  ["pcm8", 1, 8000, 0],
  ["pcm16", 2, 8000, 0],
  ["pcm24", 1, 8000, 0],
  ["pcm24-three", 3, 8000, 0],
  ["pcm32", 2, 8000, 0],
  ["float32", 2, 8000, SOX_RESOLUTION],
  ["float64", 1, 8000, SOX_RESOLUTION],
  ["remark", 1, 44_100, 0],
  ["open-length", 1, 8000, 0],
] as const;

describe("sound files made by SoX", () => {
  it.each(FILES)("%s: every sample is what SoX itself decodes", async (name, channels, rate, tolerance) => {
    const recording = await openRecording(memorySource(await readFile(new URL(`${name}.wav`, folder))));
    if (!recording.ok) throw new Error(`${recording.code} ${JSON.stringify(recording.params)}`);
    const bytes = await readFile(new URL(`${name}.f64`, folder));
    const decoded = Array.from({ length: bytes.length / 8 }, (_, k) => bytes.readDoubleLE(8 * k));
    const [track] = recording.value.tracks;
    expect(track?.clock).toEqual({ kind: "even", start: 0, rate, count: decoded.length / channels });
    const worst = { difference: 0, loudest: 0 };
    for await (const block of recording.value.read({ track: 0, channels: Array.from({ length: channels }, (_, k) => k) })) {
      if (!block.ok) throw new Error(block.code);
      for (const [channel, values] of block.value.values.entries())
        for (const [k, value] of values.entries()) {
          const expected = decoded[(block.value.first + k) * channels + channel] as number;
          worst.difference = Math.max(worst.difference, Math.abs(value - expected));
          worst.loudest = Math.max(worst.loudest, Math.abs(value));
        }
    }
    expect(worst.difference).toBeLessThanOrEqual(tolerance);
    expect(worst.loudest).toBeGreaterThan(0.1);
  });
});
