import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { memorySource, readUpTo } from "./byte-source.js";
import { LONGEST_LINE, lineChunks } from "./chunked-lines.js";
import { decodeText, encodeText } from "./decode-text.js";
import { COMMA, POINT, parseNumber } from "./parse-number.js";

const parsed = (text: string, mark = POINT): number => {
  const bytes = encodeText(text);
  return parseNumber(bytes, 0, bytes.length, mark);
};

describe("parseNumber", () => {
  it("rounds as Number rounds, whatever the digits", () => {
    fc.assert(
      fc.property(fc.double({ noNaN: true, min: -1e307, max: 1e307 }), fc.integer({ min: 0, max: 20 }), (value, digits) => {
        for (const text of [String(value), value.toExponential(digits), value.toPrecision(digits + 1)])
          expect(parsed(text)).toBe(Number(text));
      }),
    );
  });

  it.each([
    ["  1.5\t", 1.5],
    ["+.5", 0.5],
    ["5.", 5],
    ["-0", -0],
    ["1.25D+02", 125],
    ["1.0E+003", 1000],
    ["123456789012345678901234567890", 1.2345678901234568e29],
  ])("reads %j", (text, value) => expect(parsed(text)).toBe(value));

  it("reads a decimal comma where that is the sign", () => {
    expect(parsed("-3,25", COMMA)).toBe(-3.25);
    expect(parsed("3.25", COMMA)).toBe(Number.NaN);
  });

  it.each(["", " ", "-", ".", "1e", "1e+", "e5", "1.2.3", "1,5", "0x10", "Infinity", "1e999", "12a", "1 2"])(
    "finds no number in %j",
    (text) => expect(parsed(text)).toBe(Number.NaN),
  );
});

describe("decodeText", () => {
  it("is the inverse of encodeText", () => {
    fc.assert(
      fc.property(fc.string({ unit: "grapheme" }), (text) => {
        expect(decodeText(encodeText(text))).toBe(text);
      }),
    );
  });

  it("agrees with the platform's encoder", () => {
    const encoder = new TextEncoder();
    fc.assert(
      fc.property(fc.string({ unit: "binary" }), (text) => {
        expect([...encodeText(text)]).toEqual([...encoder.encode(text)]);
      }),
    );
  });

  it("takes bytes that are no UTF-8 as Latin-1", () => {
    expect(decodeText(Uint8Array.of(0x6d, 0x2f, 0x73, 0xb2))).toBe("m/s²");
    expect(decodeText(Uint8Array.of(0x80))).toBe("€");
    // Overlong, a surrogate, beyond the last code point, and cut short.
    for (const bytes of [
      [0xc0, 0xaf],
      [0xed, 0xa0, 0x80],
      [0xf4, 0x90, 0x80, 0x80],
      [0xe2, 0x82],
    ])
      expect(decodeText(Uint8Array.from(bytes))).toHaveLength(bytes.length);
  });
});

describe("lineChunks", () => {
  it("gives every byte once, cut at line ends, whatever the size of the stretches", async () => {
    await fc.assert(
      fc.asyncProperty(
        fc.array(fc.constantFrom(10, 13, 65, 66), { maxLength: 60 }),
        fc.integer({ min: 1, max: 20 }),
        async (list, size) => {
          const bytes = Uint8Array.from(list);
          const seen: number[] = [];
          for await (const chunk of lineChunks(memorySource(bytes), 0, size)) {
            expect(chunk?.offset).toBe(seen.length);
            seen.push(...(chunk?.bytes ?? []));
            if (!chunk?.last) expect(chunk?.bytes.at(-1)).toBe(10);
          }
          expect(seen).toEqual(list);
        },
      ),
    );
  });

  it("gives up on a line without an end", async () => {
    const chunks: unknown[] = [];
    for await (const chunk of lineChunks(memorySource(new Uint8Array(LONGEST_LINE * 3).fill(65)), 0)) chunks.push(chunk);
    expect(chunks).toEqual([null]);
  });
});

describe("readUpTo", () => {
  it("asks for no more than there is, and puts short reads together", async () => {
    const asked: number[] = [];
    const source = {
      size: 10,
      read: async (offset: number, length: number) => {
        asked.push(length);
        return Uint8Array.from({ length: Math.min(3, length) }, (_, k) => offset + k);
      },
    };
    expect([...(await readUpTo(source, 2, 4_000_000_000))]).toEqual([2, 3, 4, 5, 6, 7, 8, 9]);
    expect(Math.max(...asked)).toBe(8);
    expect([...(await readUpTo({ size: 10, read: async () => new Uint8Array(0) }, 0, 5))]).toEqual([]);
  });
});
