import { readFileSync } from "node:fs";
import { type ChannelScale, channelPlaces, memorySource, openRecording, type Recording } from "@halfturn/recordings";
import { expect } from "vitest";
import type { Program } from "./program.test-support.js";

/** What `convert --json` prints. */
export interface Conversion {
  readonly recording: { readonly file: string; readonly gear?: string; readonly channels?: readonly ChannelScale[] };
  readonly startS: number;
  readonly findings: readonly { readonly code: string }[];
}
/** Converts and gives what was printed; over whatever is there. */
export async function conversion(program: Program, args: readonly string[]): Promise<Conversion> {
  const { code, out, err } = await program.run(["convert", ...args, "--json", "--force"]);
  expect([code, err]).toEqual([0, ""]);
  return JSON.parse(out);
}

/** What stands in a file, channel by channel, with its times. */
export async function contentOfFile(path: string, scales: readonly ChannelScale[]) {
  const opened = await openRecording(memorySource(readFileSync(path)), scales);
  if (!opened.ok) throw new Error(`${path}: ${opened.code}`);
  return Promise.all(channelPlaces(opened.value).map(async (place) => ({ ...place.channel, ...(await samplesOf(opened.value, place)) })));
}

async function samplesOf(recording: Recording, { track, index }: { readonly track: number; readonly index: number }) {
  const [times, values]: [number[], number[]] = [[], []];
  const clock = recording.tracks[track]?.clock;
  for await (const block of recording.read({ track, channels: [index] })) {
    if (!block.ok) throw new Error(block.code);
    const own = block.value.values[0] as Float64Array;
    values.push(...own);
    times.push(
      ...own.map((_, k) => block.value.times?.[k] ?? (clock?.kind === "even" ? clock.start + (block.value.first + k) / clock.rate : 0)),
    );
  }
  return { times, values };
}
