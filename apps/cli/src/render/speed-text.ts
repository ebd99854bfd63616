import type { Numbers } from "@halfturn/words";

/** A road speed: whole where it was meant whole. */
export const speedText = (kmh: number, numbers: Numbers): string => `${numbers.plain(kmh, Number.isInteger(kmh) ? 0 : 1)} km/h`;
