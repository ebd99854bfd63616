/**
 * Cividis, nine of its steps: lightness rises evenly and colours look alike to people with and without a colour-vision deficiency.
 * Source: Nunez, Anderton and Renslow, PLOS ONE 13(7), 2018 (steps from memory).
 */
const STEPS: readonly (readonly [red: number, green: number, blue: number])[] = [
  [0, 34, 78],
  [27, 55, 109],
  [64, 77, 107],
  [92, 99, 110],
  [120, 120, 119],
  [150, 142, 119],
  [181, 165, 111],
  [215, 190, 98],
  [254, 232, 56],
];
/** Paper: where nothing is, a light screen stays light. */
const PAPER = [250, 250, 250] as const;
/** Below this share a light screen fades to paper. */
const FADES = 0.25;

export type MapGround = "light" | "dark";

/** The colour of a share from 0 (faint) to 1 (strong): toward light on a dark screen, toward dark on a light one. */
export function colourAt(share: number, ground: MapGround): readonly [red: number, green: number, blue: number] {
  const held = Math.min(1, Math.max(0, share));
  if (ground === "dark") return stepAt(held);
  const [red, green, blue] = stepAt(1 - held);
  const strength = Math.min(1, held / FADES);
  const faded = (value: number, paper: number): number => Math.round(paper + (value - paper) * strength);
  return [faded(red, PAPER[0]), faded(green, PAPER[1]), faded(blue, PAPER[2])];
}

function stepAt(share: number): readonly [number, number, number] {
  const place = share * (STEPS.length - 1);
  const step = Math.min(STEPS.length - 2, Math.floor(place));
  const [from, to] = [STEPS[step], STEPS[step + 1]] as [(typeof STEPS)[number], (typeof STEPS)[number]];
  const between = (k: 0 | 1 | 2): number => Math.round(from[k] + (to[k] - from[k]) * (place - step));
  return [between(0), between(1), between(2)];
}

/** Decibels from the strongest down to the faintest that is drawn. */
export const RANGE_DB = 30;

/** Where an amplitude lies between faint and strong, by its logarithm. */
export const shareOf = (amplitude: number, greatest: number): number =>
  amplitude > 0 && greatest > 0 ? Math.max(0, 1 + (20 * Math.log10(amplitude / greatest)) / RANGE_DB) : 0;
