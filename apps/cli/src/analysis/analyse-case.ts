import type { AnalysedDriveline } from "@halfturn/casefile";

export { type AnalysedDriveline, analyseCase } from "@halfturn/casefile";

/** Whether any number at all came out. */
export const answersAnything = (analysed: readonly Pick<AnalysedDriveline, "analysis">[]): boolean =>
  analysed.some(({ analysis }) => analysis.shafts.some(({ inclination }) => inclination !== null));

/** With --strict these fail the run: a limit passed, or a stop finding that nobody accepted. */
export const failsStrictly = (analysed: readonly AnalysedDriveline[]): boolean =>
  analysed.some(
    ({ analysis: { withheld, joints, cancellation, motion } }) =>
      withheld || [...joints.map(({ verdict }) => verdict), cancellation.verdict, motion.verdict].includes("over"),
  );
