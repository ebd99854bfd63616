import { benchTerms } from "../bench-terms.js";
import type { Explanations } from "../explanations.js";
import type { Numbers } from "../numbers/numbers.js";

export const explanations = (numbers: Numbers): Explanations => ({
  bench: ({ anglesDeg, signs, benchDeg, equivalentDeg }) => {
    const exact = numbers.angle(equivalentDeg);
    if (benchDeg === null)
      return `The bench rule says nothing here: it needs cross joints only, yokes in line or a quarter turn apart, and all shafts in one plane. The exact answer is ${exact}.`;
    const terms = benchTerms(anglesDeg, signs, numbers);
    const bench = numbers.angle(benchDeg);
    return terms === null
      ? `The bench rule adds and subtracts the angles themselves and leaves ${bench}; the shake of a joint grows with the square of its angle, so the exact answer is ${exact}.`
      : `The bench rule adds the angles, ${terms.plain} = ${bench}; the shake of a joint grows with the square of its angle, and ${terms.squared} leaves what one joint at ${exact} would.`;
  },
  nothingToRepeat: "No single reading stands out: read every shaft once more with the gauge lifted off in between.",
  notRoadAngles: "These are not road angles: a stop finding is open, so every verdict is withheld.",
  bestPhasing: (section, degrees) =>
    `With the other phasings as they stand, ${section} would leave least at a phasing of ${numbers.plain(degrees, 0)}°.`,
  intervalsMean: "± and intervals hold the true value 95 times in 100.",
});
