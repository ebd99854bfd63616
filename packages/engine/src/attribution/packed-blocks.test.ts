import fc from "fast-check";
import { expect, test } from "vitest";
import { packedBlocks } from "./packed-blocks.js";

const number = fc.double({ noNaN: true });
const block = fc.record({
  amplitude: fc.record({ cosine: number, sine: number, unitCovariance: fc.tuple(number, number, number) }),
  noise: fc.record({ variance: number, freedom: number }),
});

test("what is packed comes out as it went in, to the last bit and in order, however much it is", () => {
  fc.assert(
    fc.property(fc.array(block, { maxLength: 300, size: "max" }), (blocks) => {
      const packed = packedBlocks();
      for (const one of blocks) packed.push(one);
      expect(packed.unpacked()).toEqual(blocks);
    }),
    { numRuns: 30 },
  );
});
