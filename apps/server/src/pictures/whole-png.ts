/** Length and kind before the content of a chunk, check sum behind it (ISO/IEC 15948, 5.3). */
const BEFORE = 8;
const AROUND = 12;
const SIGNATURE = 8;

/** Whether a file that begins like one is a PNG to its end: a chain of chunks that begins with the header, holds pixels, and comes to an end. */
export function isWholePng(bytes: Uint8Array): boolean {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  let at = SIGNATURE;
  let hasPixels = false;
  while (at + AROUND <= bytes.byteLength) {
    const kind = String.fromCharCode(...bytes.subarray(at + 4, at + BEFORE));
    if ((kind === "IHDR") !== (at === SIGNATURE)) return false;
    if (kind === "IEND") return hasPixels;
    if (kind === "IDAT") hasPixels = true;
    at += AROUND + view.getUint32(at);
  }
  return false;
}
