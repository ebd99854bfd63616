/** Kind and length before the content of a chunk, which is padded to an even length (RFC 9649, 2.3). */
const BEFORE = 8;
/** "RIFF", the size of what follows, "WEBP" (2.4). */
const HEADER = 12;
/** What holds pixels: a lossy or a lossless picture (2.5, 2.6); or the frames of a moving one (2.7.1.1). */
const PIXELS = ["VP8 ", "VP8L", "ANMF"];

/** Whether a file that begins like one is a WebP picture to the end that it names: a chain of chunks, pixels among them. */
export function isWholeWebp(bytes: Uint8Array): boolean {
  if (bytes.byteLength < HEADER) return false;
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const end = 8 + view.getUint32(4, true);
  if (end > bytes.byteLength) return false;
  let at = HEADER;
  let hasPixels = false;
  while (at + BEFORE <= end) {
    if (PIXELS.includes(String.fromCharCode(...bytes.subarray(at, at + 4)))) hasPixels = true;
    const length = view.getUint32(at + 4, true);
    at += BEFORE + length + (length % 2);
  }
  return at === end && hasPixels;
}
