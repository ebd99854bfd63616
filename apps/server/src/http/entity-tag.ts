/** The W/ that some proxies and compressing servers put before a tag is passed over: revisions are exact, however the answer was packed. */
const TAG = /^(?:W\/)?"([1-9]\d{0,8})"$/;

export const tagOf = (revision: number): string => `"${revision}"`;

/** The revision that an If-Match header names (RFC 9110, section 13.1.1): one strong tag, as the server gave it. null where it is none. */
export function revisionOfTag(header: string): number | null {
  const digits = TAG.exec(header.trim())?.[1];
  return digits === undefined ? null : Number(digits);
}
