import type { AttachmentType } from "@halfturn/exchange";

const text = (bytes: Uint8Array, from: number, to: number): string => String.fromCharCode(...bytes.subarray(from, to));

const PNG_START = "\x89PNG\r\n\x1a\n";

/**
 * The kind of picture by its first bytes, whatever it claims to be; null for anything else. Signatures: ISO/IEC 15948, 5.2 (PNG); ISO/IEC 10918-1, B.1.1.3
 * (JPEG: start of image, then a marker); RFC 9649, 2.4 (WebP).
 */
export function pictureType(bytes: Uint8Array): AttachmentType | null {
  if (text(bytes, 0, 8) === PNG_START) return "image/png";
  if (text(bytes, 0, 3) === "\xff\xd8\xff") return "image/jpeg";
  return text(bytes, 0, 4) === "RIFF" && text(bytes, 8, 12) === "WEBP" ? "image/webp" : null;
}
