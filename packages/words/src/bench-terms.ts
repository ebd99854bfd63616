import type { Numbers } from "./numbers/numbers.js";

/** The sum of angles and the sum of their squares, written out. */
export interface BenchTerms {
  readonly plain: string;
  readonly squared: string;
}

/** "3.00 − 5.00 + 4.00" and "3.00² − 5.00² + 4.00²", with the decimals of the table of joints, so that the sum can be followed; null where the angles or their signs are not all known. */
export function benchTerms(anglesDeg: readonly number[], signs: readonly (1 | -1)[] | null, numbers: Numbers): BenchTerms | null {
  if (signs === null || anglesDeg.length === 0 || anglesDeg.length !== signs.length) return null;
  const total = anglesDeg.reduce((sum, angle, k) => sum + angle * (signs[k] as number), 0);
  // The rule takes the size of the sum; writing it the way round that comes out positive spares the reader a minus sign.
  const way = total < 0 ? -1 : 1;
  const write = (power: string): string =>
    anglesDeg
      .map((angle, k) => {
        const minus = (signs[k] as number) * way < 0;
        const sign = k === 0 ? (minus ? "−" : "") : minus ? " − " : " + ";
        return `${sign}${numbers.plain(angle, 2)}${power}`;
      })
      .join("");
  return { plain: write(""), squared: write("²") };
}
