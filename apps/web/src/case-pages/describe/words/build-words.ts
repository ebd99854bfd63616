import type { ByLanguage } from "../../../words/use-words.js";

/** How many sections and drivelines a vehicle has. */
interface BuildWords {
  readonly title: string;
  readonly shaft: string;
  readonly pieces: (count: number) => string;
  readonly help: string;
  readonly partsNamed: (pieces: string) => string;
  readonly remove: (name: string) => string;
  readonly named: string;
  readonly add: { readonly rearward: string; readonly forward: string };
}

const nth = (names: readonly string[], count: number, other: string): string => names[count] ?? other;

export const buildWords: ByLanguage<BuildWords> = {
  en: {
    title: "How it is put together",
    shaft: "The propeller shaft is",
    pieces: (count) => nth(["A joint alone", "In one piece", "In two pieces", "In three pieces"], count, `In ${count} pieces`),
    help: "Every piece more brings a section, a joint and a support bearing. What was typed for a part that goes, goes with it; Undo brings it back.",
    partsNamed: (pieces) =>
      `${pieces}. Readings, adjusters or corrections name its parts, so it stays as it is. To build it otherwise, take those out first or start a new case.`,
    remove: (name) => `Take out ${name}`,
    named: "Gaugings, adjusters, loads or corrections name this driveline, so it cannot be taken out.",
    add: { rearward: "Add a driveline to the rear axle", forward: "Add a driveline to the front axle" },
  },
  es: {
    title: "Cómo está armada",
    shaft: "El árbol de transmisión es",
    pieces: (count) => nth(["Una junta sola", "De una pieza", "De dos piezas", "De tres piezas"], count, `De ${count} piezas`),
    help: "Cada pieza más trae un tramo, una junta y un apoyo central. Lo escrito para una parte que se va, se va con ella; Deshacer lo devuelve.",
    partsNamed: (pieces) =>
      `${pieces}. Hay lecturas, ajustes o correcciones que nombran sus partes, así que se queda como está. Para armarla de otro modo, quítelos antes o empiece un caso nuevo.`,
    remove: (name) => `Quitar ${name}`,
    named: "Hay mediciones, ajustes, cargas o correcciones que nombran esta línea, así que no se puede quitar.",
    add: { rearward: "Añadir una línea al eje trasero", forward: "Añadir una línea al eje delantero" },
  },
};
