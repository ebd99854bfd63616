import type { Finding, FindingCode } from "../findings/index.js";

/**
 * A remark. Params: `part` and `order`, `otherPart` and `otherOrder` name orders; frequencies end in Hz; shares are 0 to 1 and end in Share.
 * path: "channels[1]", or "" where it is about the whole.
 */
export type AttributionFinding = Finding & { readonly code: Extract<FindingCode, `attribution.${string}`> };
