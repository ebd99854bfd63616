import { benchTerms } from "../bench-terms.js";
import type { Explanations } from "../explanations.js";
import type { Numbers } from "../numbers/numbers.js";

export const explanations = (numbers: Numbers): Explanations => ({
  bench: ({ anglesDeg, signs, benchDeg, equivalentDeg }) => {
    const exact = numbers.angle(equivalentDeg);
    if (benchDeg === null)
      return `La regla de banco no dice nada aquí: exige solo juntas de cruceta, horquillas en línea o a un cuarto de vuelta y todos los árboles en un plano. La respuesta exacta es ${exact}.`;
    const terms = benchTerms(anglesDeg, signs, numbers);
    const bench = numbers.angle(benchDeg);
    return terms === null
      ? `La regla de banco suma y resta los propios ángulos y deja ${bench}; la sacudida de una junta crece con el cuadrado de su ángulo, así que la respuesta exacta es ${exact}.`
      : `La regla de banco suma los ángulos, ${terms.plain} = ${bench}; la sacudida de una junta crece con el cuadrado de su ángulo, y ${terms.squared} deja lo mismo que una sola junta a ${exact}.`;
  },
  nothingToRepeat: "Ninguna lectura destaca: lea cada árbol una vez más, levantando el inclinómetro entre lecturas.",
  notRoadAngles: "No son ángulos de marcha: hay un hallazgo de parada abierto, así que no se da ningún veredicto.",
  bestPhasing: (section, degrees) =>
    `Con las demás fases como están, ${section} dejaría lo mínimo con una fase de ${numbers.plain(degrees, 0)}°.`,
  intervalsMean: "Los valores ± y los intervalos contienen el valor verdadero 95 veces de cada 100.",
});
