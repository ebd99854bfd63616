import type { ChannelQuantity } from "@halfturn/recordings";
import type { Numbers } from "@halfturn/words";

/** What amplitudes are written in, and how many of it are one in SI. */
const WRITTEN: { readonly [Q in ChannelQuantity]?: readonly [unit: string, perSi: number] } = {
  acceleration: ["m/s²", 1],
  velocity: ["mm/s", 1e3],
  displacement: ["mm", 1e3],
  pressure: ["Pa", 1],
};
/** Of a scale that nobody knows the amplitude is a share of what the file can hold. */
const SHARE: readonly [string, number] = ["%", 100];

/** Writes amplitudes of a kind of channel, given in SI: "0.98 m/s²", "1.25 mm/s", "3.10 %". */
export function amplitudeText(quantity: ChannelQuantity | undefined, numbers: Numbers): (amplitude: number) => string {
  const [unit, perSi] = (quantity && WRITTEN[quantity]) ?? SHARE;
  return (amplitude) => `${numbers.plain(amplitude * perSi, amplitude * perSi < 0.0995 ? 3 : 2)}\u00a0${unit}`;
}
