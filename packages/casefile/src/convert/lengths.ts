import { type Metres, metres } from "@halfturn/engine/units";

/** Case files write lengths in millimetres. */
export const fromMillimetres = (length: number): Metres => metres(length / 1000);
