import type { AttributionFinding } from "./attribution-finding.js";
import type { AttributionInput } from "./input.js";
import type { ChannelCheck } from "./sensor-checks.js";
import { DERIVATIVES } from "./to-acceleration.js";

/** What the samples themselves say: ends of the scale, and sounds. */
export const channelFindings = ({ channels }: AttributionInput, checks: readonly ChannelCheck[]): readonly AttributionFinding[] => [
  ...checks.flatMap(({ clipped, clippedShare }, i): readonly AttributionFinding[] =>
    clipped === 0
      ? []
      : [{ code: "attribution.clipped", severity: "warn", path: `channels[${i}]`, params: { samples: clipped, clippedShare } }],
  ),
  ...channels.flatMap(({ quantity }, i): readonly AttributionFinding[] =>
    quantity === "sound" ? [{ code: "attribution.sound-only", severity: "note", path: `channels[${i}]`, params: {} }] : [],
  ),
  ...channels.flatMap(({ quantity }, i): readonly AttributionFinding[] =>
    DERIVATIVES[quantity] > 0 ? [{ code: "attribution.differentiated", severity: "note", path: `channels[${i}]`, params: {} }] : [],
  ),
];
