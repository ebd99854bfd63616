import { type AttachmentType, MAX_PICTURE_PIXELS } from "@halfturn/exchange";
import { disableTypes, imageSize, types } from "image-size";
import { isWholeJpeg } from "./whole-jpeg.js";
import { isWholePng } from "./whole-png.js";
import { isWholeWebp } from "./whole-webp.js";

const KINDS = {
  jpg: { type: "image/jpeg", isWhole: isWholeJpeg },
  png: { type: "image/png", isWhole: isWholePng },
  webp: { type: "image/webp", isWhole: isWholeWebp },
} as const satisfies Readonly<Record<string, { readonly type: AttachmentType; readonly isWhole: (bytes: Uint8Array) => boolean }>>;

// The library then reads nothing but these three.
disableTypes(types.filter((type) => !Object.hasOwn(KINDS, type)));

export type ReadPicture =
  | { readonly ok: true; readonly type: AttachmentType }
  | { readonly ok: false; readonly why: "unknown" | "damaged" }
  | { readonly ok: false; readonly why: "too-many-pixels"; readonly pixels: number };

/**
 * What a file holds, whatever it claims to be: a picture of a kind that is taken, whole from its first byte to its end, and of a size that every screen can show. A
 * few bytes may say that they are a hundred thousand pixels wide; who opens them pays for that.
 */
export function readPicture(bytes: Uint8Array): ReadPicture {
  const kind = kindOf(bytes);
  if (kind === null) return { ok: false, why: "unknown" };
  if (!kind.isWhole(bytes)) return { ok: false, why: "damaged" };
  const pixels = pixelsOf(bytes);
  if (pixels === 0) return { ok: false, why: "damaged" };
  return pixels > MAX_PICTURE_PIXELS ? { ok: false, why: "too-many-pixels", pixels } : { ok: true, type: kind.type };
}

const text = (bytes: Uint8Array, from: number, to: number): string => String.fromCharCode(...bytes.subarray(from, to));

/** By the first bytes: ISO/IEC 15948, 5.2 (PNG); ISO/IEC 10918-1, B.1.1.3 (JPEG: start of image, then a marker); RFC 9649, 2.4 (WebP). */
function kindOf(bytes: Uint8Array): (typeof KINDS)[keyof typeof KINDS] | null {
  if (text(bytes, 0, 8) === "\x89PNG\r\n\x1a\n") return KINDS.png;
  if (text(bytes, 0, 3) === "\xff\xd8\xff") return KINDS.jpg;
  return text(bytes, 0, 4) === "RIFF" && text(bytes, 8, 12) === "WEBP" ? KINDS.webp : null;
}

/** 0 where the library finds no size. */
function pixelsOf(bytes: Uint8Array): number {
  try {
    const { width, height } = imageSize(bytes);
    return width * height;
  } catch {
    return 0;
  }
}
