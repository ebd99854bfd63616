import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { readPicture } from "./read-picture.js";
import { PICTURES, withTail } from "./sample-pictures.test-support.js";

const SEED = 20_260_502;

const samples = Object.entries(PICTURES);
const KIND: Readonly<Record<string, string>> = {
  png: "image/png",
  jpeg: "image/jpeg",
  progressiveJpeg: "image/jpeg",
  webp: "image/webp",
  losslessWebp: "image/webp",
};

describe.each(samples)("%s", (name, picture) => {
  test("is taken whole, and with something behind its end", () => {
    expect(readPicture(picture)).toEqual({ ok: true, type: KIND[name] });
    expect(readPicture(withTail(picture, "a short film"))).toEqual({ ok: true, type: KIND[name] });
  });

  test("is refused at whatever length it is cut", () => {
    for (let length = 0; length < picture.length; length++)
      expect([length, readPicture(picture.subarray(0, length)).ok]).toEqual([length, false]);
  });

  test("is read or refused, and nothing else, whatever is changed in it", () => {
    const changes = fc.array(fc.record({ at: fc.nat({ max: picture.length - 1 }), by: fc.integer({ min: 1, max: 255 }) }), {
      minLength: 1,
      maxLength: 8,
    });
    fc.assert(
      fc.property(changes, (all) => {
        const changed = Uint8Array.from(picture);
        for (const { at, by } of all) changed[at] = ((changed[at] ?? 0) + by) % 256;
        const read = readPicture(changed);
        expect(read.ok || ["unknown", "damaged", "too-many-pixels"].includes(read.why)).toBe(true);
      }),
      { seed: SEED, numRuns: 500 },
    );
  });
});

test("a preview within a photograph, which has an end of its own, does not stand for the end of the photograph", () => {
  const preview = PICTURES.jpeg;
  const length = preview.length + 2;
  const segment = [0xff, 0xe1, length >> 8, length & 255, ...preview];
  const photograph = Uint8Array.from([...PICTURES.progressiveJpeg.subarray(0, 2), ...segment, ...PICTURES.progressiveJpeg.subarray(2)]);
  expect(readPicture(photograph)).toEqual({ ok: true, type: "image/jpeg" });
  expect(readPicture(photograph.subarray(0, photograph.length - 100))).toEqual({ ok: false, why: "damaged" });
});

test.each([
  ["nothing", new Uint8Array(0)],
  ["a drawing with a script in it", new TextEncoder().encode("<svg onload=alert(1)>")],
  ["a moving picture of another kind", new TextEncoder().encode("GIF89a\x01\0\x01\0\0\0\0;")],
])("%s is no picture that is taken", (_, bytes) => {
  expect(readPicture(bytes)).toEqual({ ok: false, why: "unknown" });
});

test.each([
  ["png", 16, 4],
  ["jpeg", 0, 2],
])("a %s of a few bytes that says it is huge is refused by its pixels", (name, place, bytes) => {
  const huge = Uint8Array.from(PICTURES[name as keyof typeof PICTURES]);
  const view = new DataView(huge.buffer);
  // Height and width follow each other: in the first chunk of a PNG, and behind the frame header FF C0 of a JPEG.
  const at = bytes === 4 ? place : huge.findIndex((byte, k) => byte === 0xff && huge[k + 1] === 0xc0) + 5;
  for (const k of [0, 1]) bytes === 4 ? view.setUint32(at + 4 * k, 50_000) : view.setUint16(at + 2 * k, 50_000);
  expect(readPicture(huge)).toEqual({ ok: false, why: "too-many-pixels", pixels: 2_500_000_000 });
});
