import type { NoisyBlock } from "./line-amplitude.js";

/** An order in many blocks, in order. Held as bare numbers: as objects an hour of three channels would take three times the memory, and keep the collector busy. */
export interface PackedBlocks {
  readonly push: (block: NoisyBlock) => void;
  /** All of them, made anew. */
  readonly unpacked: () => readonly NoisyBlock[];
}

/** Numbers to a block: cosine, sine, three of the covariance, variance and freedom of the noise. */
const WIDTH = 7;
const FIRST = 64;

/** An empty list; it doubles its room when that is full. */
export function packedBlocks(): PackedBlocks {
  let numbers = new Float64Array(FIRST * WIDTH);
  let length = 0;
  return {
    push: ({ amplitude: { cosine, sine, unitCovariance }, noise }) => {
      if ((length + 1) * WIDTH > numbers.length) {
        const more = new Float64Array(2 * numbers.length);
        more.set(numbers);
        numbers = more;
      }
      numbers.set([cosine, sine, ...unitCovariance, noise.variance, noise.freedom], length * WIDTH);
      length++;
    },
    unpacked: () => Array.from({ length }, (_, k) => blockAt(numbers, k * WIDTH)),
  };
}

function blockAt(numbers: Float64Array, at: number): NoisyBlock {
  const [cosine, sine, aa, ab, bb, variance, freedom] = numbers.subarray(at, at + WIDTH) as unknown as readonly [
    number,
    number,
    number,
    number,
    number,
    number,
    number,
  ];
  return { amplitude: { cosine, sine, unitCovariance: [aa, ab, bb] }, noise: { variance, freedom } };
}
