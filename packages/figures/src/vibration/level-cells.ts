/** How many shades; each begins at half of the one before. */
export const LEVELS = 5;

/** Neighbouring places of one shade, in columns [from, to) of a row. */
export interface LevelRun {
  readonly row: number;
  readonly from: number;
  readonly to: number;
  /** 0 = darkest. */
  readonly level: number;
}

/** The shade of an amplitude: 0 above half the greatest, 1 above a quarter, ...; null below the lightest, or where nothing is known. */
export function levelOf(amplitude: number, greatest: number): number | null {
  if (!(amplitude > 0 && greatest > 0)) return null;
  const level = Math.floor(Math.log2(greatest / amplitude));
  return level < LEVELS ? Math.max(0, level) : null;
}

/** A map as runs of one shade, so that a picture of thousands of places stays small. */
export function levelRuns(amplitudes: Float64Array, columns: number, greatest: number): readonly LevelRun[] {
  const runs: LevelRun[] = [];
  for (let row = 0; row * columns < amplitudes.length; row++) {
    let from = 0;
    while (from < columns) {
      const level = levelOf(amplitudes[row * columns + from] as number, greatest);
      let to = from + 1;
      while (to < columns && levelOf(amplitudes[row * columns + to] as number, greatest) === level) to++;
      if (level !== null) runs.push({ row, from, to, level });
      from = to;
    }
  }
  return runs;
}
