/** How the samples of a WAV are written. Containers of whole bytes, little-endian. */
export type WavEncoding = "pcm8" | "pcm16" | "pcm24" | "pcm32" | "float32" | "float64";

export const BYTES_OF: { readonly [E in WavEncoding]: number } = { pcm8: 1, pcm16: 2, pcm24: 3, pcm32: 4, float32: 4, float64: 8 };

/** Reads the sample at a byte, as a share of full scale (float: as it stands). Full scale of n bits is 2^(n-1), so the most negative is -1. */
type SampleReader = (view: DataView, at: number) => number;

export const SAMPLE_READERS: { readonly [E in WavEncoding]: SampleReader } = {
  // Eight bits alone are unsigned.
  pcm8: (view, at) => (view.getUint8(at) - 128) / 128,
  pcm16: (view, at) => view.getInt16(at, true) / 32_768,
  pcm24: (view, at) => (view.getUint16(at, true) + view.getInt8(at + 2) * 65_536) / 8_388_608,
  pcm32: (view, at) => view.getInt32(at, true) / 2_147_483_648,
  float32: (view, at) => view.getFloat32(at, true),
  float64: (view, at) => view.getFloat64(at, true),
};

/** Writes a share of full scale; integers are rounded, and held within their range. */
type SampleWriter = (view: DataView, at: number, share: number) => void;

const held = (share: number, scale: number): number => Math.max(-scale, Math.min(scale - 1, Math.round(share * scale)));

export const SAMPLE_WRITERS: { readonly [E in WavEncoding]: SampleWriter } = {
  pcm8: (view, at, share) => view.setUint8(at, held(share, 128) + 128),
  pcm16: (view, at, share) => view.setInt16(at, held(share, 32_768), true),
  pcm24: (view, at, share) => {
    const value = held(share, 8_388_608);
    view.setUint16(at, value & 0xffff, true);
    view.setInt8(at + 2, value >> 16);
  },
  pcm32: (view, at, share) => view.setInt32(at, held(share, 2_147_483_648), true),
  float32: (view, at, share) => view.setFloat32(at, share, true),
  float64: (view, at, share) => view.setFloat64(at, share, true),
};

const PCM: Readonly<Record<number, WavEncoding>> = { 8: "pcm8", 16: "pcm16", 24: "pcm24", 32: "pcm32" };
const FLOAT: Readonly<Record<number, WavEncoding>> = { 32: "float32", 64: "float64" };

/** The encoding of a format tag and a container's bits; null where it is another (compressed, say). */
export function wavEncoding(tag: number, bits: number): WavEncoding | null {
  if (tag === 1) return PCM[bits] ?? null;
  return tag === 3 ? (FLOAT[bits] ?? null) : null;
}
