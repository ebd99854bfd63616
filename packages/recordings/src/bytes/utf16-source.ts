import { type ByteSource, readUpTo } from "./byte-source.js";

/** Which byte of a letter comes first, by the mark at the start of a text; null where there is none. */
export function utf16Order(start: Uint8Array): "little" | "big" | null {
  if (start[0] === 0xff && start[1] === 0xfe) return "little";
  return start[0] === 0xfe && start[1] === 0xff ? "big" : null;
}

const MARK_BYTES = 2;
const LETTER_BYTES = 2;
const QUESTION = 0x3f;
/** The Greek letter beside the micro sign, which looks the same. */
const [GREEK_MU, MICRO] = [0x3bc, 0xb5];

/**
 * A text in UTF-16 as Latin-1, a byte for each letter: any place of it is found without reading what comes before. Letters that Latin-1 does not have become question marks; numbers
 * and units have none.
 */
export const latin1Source = (source: ByteSource, order: "little" | "big"): ByteSource => ({
  size: Math.max(0, Math.floor((source.size - MARK_BYTES) / LETTER_BYTES)),
  read: async (offset, length) => {
    const bytes = await readUpTo(source, MARK_BYTES + LETTER_BYTES * offset, LETTER_BYTES * length);
    const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
    return Uint8Array.from({ length: Math.floor(bytes.length / LETTER_BYTES) }, (_, k) =>
      latin1(view.getUint16(LETTER_BYTES * k, order === "little")),
    );
  },
});

function latin1(letter: number): number {
  if (letter <= 0xff) return letter;
  return letter === GREEK_MU ? MICRO : QUESTION;
}
