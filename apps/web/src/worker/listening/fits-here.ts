import type { ChannelPlace, Recording, RecordingResult } from "@halfturn/recordings";

/** Samples of all chosen channels together that a browser can hold in memory beside what is done with them: half a gigabyte, as of two sounds of ten minutes each. */
export const MOST_SAMPLES = 60_000_000;

/** Whether channels fit into a browser's memory, by what the file says of their length. Fault: recording.too-many. */
export function fitsHere({ tracks }: Recording, places: readonly ChannelPlace[]): RecordingResult<null> {
  const samples = places.reduce((sum, { track }) => sum + (tracks[track]?.clock.count ?? 0), 0);
  return samples <= MOST_SAMPLES ? { ok: true, value: null } : tooMany();
}

export const tooMany = (): Extract<RecordingResult<never>, { readonly ok: false }> => ({
  ok: false,
  code: "recording.too-many",
  path: "",
  params: { of: "samples", limit: MOST_SAMPLES },
});
