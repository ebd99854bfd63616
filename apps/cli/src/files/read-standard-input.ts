/** All of standard input, or one byte more than the limit: enough to know that it is too large without taking it all in. */
export async function readStandardInput(limit: number): Promise<Uint8Array> {
  const chunks: Uint8Array[] = [];
  let bytes = 0;
  for await (const chunk of process.stdin as AsyncIterable<Uint8Array>) {
    chunks.push(chunk);
    bytes += chunk.length;
    if (bytes > limit) break;
  }
  return Buffer.concat(chunks).subarray(0, limit + 1);
}
