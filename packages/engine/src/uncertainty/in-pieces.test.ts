import { expect, test } from "vitest";
import { inPieces, partOfWork, scaledSteps } from "./in-pieces.js";
import type { PausedWork } from "./long-work.js";

function* threePieces(): Generator<number, string> {
  yield 0.25;
  yield 0.5;
  yield 1;
  return "done";
}

test("says how far it is after each piece, pauses, and gives the result", async () => {
  const seen: (number | string)[] = [];
  const result = await inPieces(threePieces(), {
    onProgress: (share) => seen.push(share),
    pause: async () => {
      seen.push("pause");
    },
  });
  expect([result, ...seen]).toEqual(["done", 0.25, "pause", 0.5, "pause", 1, "pause"]);
});

test("stops with the signal's own reason, also when it is raised during a pause", async () => {
  const reason = new Error("no longer wanted");
  let stopped = false;
  const signal = {
    throwIfAborted: () => {
      if (stopped) throw reason;
    },
  };
  const seen: number[] = [];
  const work = inPieces(threePieces(), {
    signal,
    onProgress: (share) => seen.push(share),
    pause: async () => {
      stopped = true;
    },
  });
  await expect(work).rejects.toBe(reason);
  expect(seen).toEqual([0.25]);
});

test("a part of longer work stands at its share of it", () => {
  const steps = scaledSteps(threePieces(), 0.5, 0.25);
  expect([...steps]).toEqual([0.5625, 0.625, 0.75]);
});

test("whoever watches the whole sees a part of it as its share, and a pause stays a pause", async () => {
  const seen: number[] = [];
  let pauses = 0;
  const whole = {
    onProgress: (share: number) => seen.push(share),
    pause: async () => {
      pauses++;
    },
  };
  await inPieces(threePieces(), partOfWork(whole, 0.5, 0.75));
  expect([seen, pauses]).toEqual([[0.5625, 0.625, 0.75], 3]);
  expect(partOfWork<PausedWork>({}, 0, 1).onProgress).toBeUndefined();
});
