/** The sixteen-odd characters that Windows puts where Latin-1 has controls. Source: WHATWG Encoding Standard, index windows-1252. */
const WINDOWS = "€\u0081‚ƒ„…†‡ˆ‰Š‹Œ\u008dŽ\u008f\u0090‘’“”•–—˜™š›œ\u009džŸ";

/** Bytes as UTF-8 where they are that, and as Latin-1 (Windows) where they are not: some loggers write m/s² in one byte. */
export function decodeText(bytes: Uint8Array): string {
  const parts: string[] = [];
  for (let at = 0; at < bytes.length; ) {
    const point = utf8At(bytes, at);
    if (point === null) return decodeLatin1(bytes);
    parts.push(String.fromCodePoint(point.code));
    at += point.length;
  }
  return parts.join("");
}

function decodeLatin1(bytes: Uint8Array): string {
  let text = "";
  for (const byte of bytes) text += byte >= 0x80 && byte < 0xa0 ? (WINDOWS[byte - 0x80] as string) : String.fromCharCode(byte);
  return text;
}

/** A text as UTF-8. */
export function encodeText(text: string): Uint8Array {
  const bytes: number[] = [];
  for (const character of text) {
    const code = character.codePointAt(0) as number;
    if (code < 0x80) bytes.push(code);
    else if (code < 0x800) bytes.push(0xc0 | (code >> 6), tail(code));
    else if (code < 0x10000) bytes.push(0xe0 | (code >> 12), tail(code >> 6), tail(code));
    else bytes.push(0xf0 | (code >> 18), tail(code >> 12), tail(code >> 6), tail(code));
  }
  return Uint8Array.from(bytes);
}

const tail = (code: number): number => 0x80 | (code & 0x3f);

/** Length in bytes, and the least code point that may be written with so many, by the first byte's leading ones. */
const FORMS = [
  { mask: 0xe0, lead: 0xc0, length: 2, least: 0x80 },
  { mask: 0xf0, lead: 0xe0, length: 3, least: 0x800 },
  { mask: 0xf8, lead: 0xf0, length: 4, least: 0x10000 },
] as const;

/** The code point at a place, or null where the bytes are not UTF-8 (RFC 3629: shortest form, no surrogates, up to U+10FFFF). */
function utf8At(bytes: Uint8Array, at: number): { readonly code: number; readonly length: number } | null {
  const lead = bytes[at] as number;
  if (lead < 0x80) return { code: lead, length: 1 };
  const form = FORMS.find((one) => (lead & one.mask) === one.lead);
  if (form === undefined) return null;
  let code = lead & ~form.mask & 0xff;
  for (let k = 1; k < form.length; k++) {
    const byte = bytes[at + k];
    if (byte === undefined || (byte & 0xc0) !== 0x80) return null;
    code = code * 64 + (byte & 0x3f);
  }
  const surrogate = code >= 0xd800 && code <= 0xdfff;
  return code < form.least || code > 0x10ffff || surrogate ? null : { code, length: form.length };
}
