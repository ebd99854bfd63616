import type { Context } from "hono";

export type Body = { readonly ok: true; readonly bytes: Uint8Array } | { readonly ok: false; readonly why: "too-large" };

/** So much of a body that is too large is read away, for the answer to reach a client that goes on sending. */
const DRAINED = 64_000_000;

/**
 * The body of a request, up to `limit` bytes. One that is too large is read to its end and thrown away, or cut off where it never ends: a client that is still
 * sending would otherwise see a broken connection instead of the answer.
 */
export async function readBody(c: Context, limit: number): Promise<Body> {
  const stream = c.req.raw.body;
  if (stream === null) return { ok: true, bytes: new Uint8Array(0) };
  const tooLarge = Number(c.req.header("content-length") ?? 0) > limit;
  const chunks: Uint8Array[] = [];
  let size = 0;
  const reader = stream.getReader();
  for (;;) {
    const { done, value } = await reader.read();
    if (done) break;
    size += value.byteLength;
    if (tooLarge || size > limit) {
      chunks.length = 0;
      if (size > DRAINED) {
        c.header("connection", "close");
        await reader.cancel();
        break;
      }
    } else chunks.push(value);
  }
  if (tooLarge || size > limit) return { ok: false, why: "too-large" };
  return { ok: true, bytes: joined(chunks, size) };
}

function joined(chunks: readonly Uint8Array[], size: number): Uint8Array {
  const bytes = new Uint8Array(size);
  let at = 0;
  for (const chunk of chunks) {
    bytes.set(chunk, at);
    at += chunk.byteLength;
  }
  return bytes;
}
