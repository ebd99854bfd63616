/** Markers (ISO/IEC 10918-1, table B.1), by their second byte. */
const [SCAN, END] = [0xda, 0xd9];
/** Restarts stand among the pixels and have no length. */
const isRestart = (marker: number): boolean => marker >= 0xd0 && marker <= 0xd7;
/** Frame headers, which say the size; three numbers between them mean something else. */
const isFrame = (marker: number): boolean => marker >= 0xc0 && marker <= 0xcf && marker !== 0xc4 && marker !== 0xc8 && marker !== 0xcc;

/**
 * Whether a file that begins like one is a JPEG to its end: a chain of segments with a frame, then a scan, then the end of the image. What a phone puts behind that,
 * a short film for instance, is passed over.
 */
export function isWholeJpeg(bytes: Uint8Array): boolean {
  const byte = (at: number): number => bytes[at] ?? 0;
  let at = 2;
  let hasFrame = false;
  let hasScan = false;
  while (at + 1 < bytes.byteLength) {
    if (byte(at) !== 0xff) return false;
    const marker = byte(at + 1);
    if (marker === END) return hasScan;
    // Any number of ones may fill the place before a marker (B.1.1.2).
    if (marker === 0xff) {
      at++;
      continue;
    }
    const length = byte(at + 2) * 256 + byte(at + 3);
    if (length < 2) return false;
    if (isFrame(marker)) hasFrame = true;
    at += 2 + length;
    if (marker !== SCAN) continue;
    if (!hasFrame) return false;
    hasScan = true;
    at = behindScan(bytes, at);
  }
  return false;
}

/** The next marker behind the pixels that begin at `at`: among them a byte of ones is followed by a nought or a restart (B.1.1.5). */
function behindScan(bytes: Uint8Array, at: number): number {
  for (let next = bytes.indexOf(0xff, at); next >= 0; next = bytes.indexOf(0xff, next + 1)) {
    const after = bytes[next + 1];
    if (after !== 0 && after !== undefined && after !== 0xff && !isRestart(after)) return next;
  }
  return bytes.byteLength;
}
