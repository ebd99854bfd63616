/** Bytes to be read in parts: a file, a blob, memory. */
export interface ByteSource {
  readonly size: number;
  /** Up to `length` bytes from `offset`; fewer only at the end. The bytes are not written to afterwards. */
  readonly read: (offset: number, length: number) => Promise<Uint8Array>;
}

/** Bytes that are in memory already. */
export const memorySource = (bytes: Uint8Array): ByteSource => ({
  size: bytes.length,
  read: async (offset, length) => bytes.subarray(offset, offset + length),
});

/** Exactly `length` bytes, or as many as the source has from there. Never allocates more than the source says it holds. */
export async function readUpTo(source: ByteSource, offset: number, length: number): Promise<Uint8Array> {
  const wanted = Math.max(0, Math.min(length, source.size - offset));
  if (wanted === 0) return new Uint8Array(0);
  const first = await source.read(offset, wanted);
  if (first.length >= wanted || first.length === 0) return first.subarray(0, wanted);
  const whole = new Uint8Array(wanted);
  whole.set(first);
  let filled = first.length;
  while (filled < wanted) {
    const next = await source.read(offset + filled, wanted - filled);
    if (next.length === 0) break;
    whole.set(next.subarray(0, wanted - filled), filled);
    filled += Math.min(next.length, wanted - filled);
  }
  return whole.subarray(0, filled);
}
