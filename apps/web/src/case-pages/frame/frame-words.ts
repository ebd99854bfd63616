import type { ByLanguage } from "../../words/use-words.js";
import type { ProgressNote } from "./step-progress.js";

/** Steps whose cautions stand above the page. */
export type CautionedStep = "isolate" | "explain" | "prove";

interface FrameWords {
  readonly steps: string;
  readonly undo: string;
  readonly redo: string;
  readonly allCases: string;
  readonly settings: string;
  readonly opening: string;
  readonly notFound: string;
  readonly notFoundHelp: string;
  readonly noSuchStep: string;
  readonly calculating: string;
  readonly untitled: string;
  readonly note: (note: ProgressNote) => string;
  /** The heart of a step's cautions, in a few words. */
  readonly caution: Readonly<Record<CautionedStep, string>>;
  readonly readCautions: string;
}

export const frameWords: ByLanguage<FrameWords> = {
  en: {
    steps: "Steps of this case",
    undo: "Undo",
    redo: "Redo",
    allCases: "All cases",
    settings: "Settings",
    opening: "Opening the case",
    notFound: "This case is not on this device",
    notFoundHelp: "It may have been put away, or the shop's server cannot be reached. Look for it in the list of cases.",
    noSuchStep: "There is no such step.",
    calculating: "calculating",
    caution: {
      isolate: "Nothing loose near the shaft",
      explain: "Uncertain? Measure again",
      prove: "First run: slowly",
    },
    readCautions: "Read the cautions",
    untitled: "Untitled case",
    note: (note) => {
      switch (note.code) {
        case "recordings":
          return note.count === 1 ? "1 recording" : `${note.count} recordings`;
        case "observations":
          return note.count === 1 ? "1 test" : `${note.count} tests`;
        case "shafts-to-read":
          return note.count === 1 ? "1 shaft to read" : `${note.count} shafts to read`;
        case "described":
          return "described";
        case "complaint-missing":
          return "no complaint yet";
        case "lengths-missing":
          return "lengths missing";
        case "phasing-missing":
          return "phasing not measured";
        case "not-recorded":
          return "optional";
        case "not-isolated":
          return "nothing tried";
        case "not-gauged":
          return "not gauged";
        case "gauged":
          return "gauged";
        case "not-road-angles":
          return "not road angles";
        case "gauge-first":
          return "needs gauging";
        case "within":
          return "within limits";
        case "over":
          return "limit exceeded";
        case "uncertain":
          return "uncertain";
        case "nothing-to-adjust":
          return "no adjusters yet";
        case "not-chosen":
          return "none chosen";
        case "chosen":
          return "chosen, not made";
        case "made":
          return "made";
        case "not-made":
          return "nothing corrected";
        case "not-gauged-after":
          return "gauge again";
        case "proved":
          return "gauged again";
        case "ready":
          return "ready";
      }
    },
  },
  es: {
    steps: "Pasos de este caso",
    undo: "Deshacer",
    redo: "Rehacer",
    allCases: "Todos los casos",
    settings: "Ajustes",
    opening: "Abriendo el caso",
    notFound: "Este caso no está en este dispositivo",
    notFoundHelp: "Quizá se archivó, o no se alcanza el servidor del taller. Búsquelo en la lista de casos.",
    noSuchStep: "No existe ese paso.",
    calculating: "calculando",
    caution: {
      isolate: "Nada suelto junto al árbol",
      explain: "¿Incierto? Mida otra vez",
      prove: "Primera marcha: despacio",
    },
    readCautions: "Leer las precauciones",
    untitled: "Caso sin título",
    note: (note) => {
      switch (note.code) {
        case "recordings":
          return note.count === 1 ? "1 grabación" : `${note.count} grabaciones`;
        case "observations":
          return note.count === 1 ? "1 prueba" : `${note.count} pruebas`;
        case "shafts-to-read":
          return note.count === 1 ? "falta leer 1 árbol" : `falta leer ${note.count} árboles`;
        case "described":
          return "descrito";
        case "complaint-missing":
          return "falta la queja";
        case "lengths-missing":
          return "faltan longitudes";
        case "phasing-missing":
          return "fase sin medir";
        case "not-recorded":
          return "opcional";
        case "not-isolated":
          return "nada probado";
        case "not-gauged":
          return "sin medir";
        case "gauged":
          return "medido";
        case "not-road-angles":
          return "no son ángulos de marcha";
        case "gauge-first":
          return "falta medir";
        case "within":
          return "dentro de límites";
        case "over":
          return "límite superado";
        case "uncertain":
          return "incierto";
        case "nothing-to-adjust":
          return "sin ajustes aún";
        case "not-chosen":
          return "sin elegir";
        case "chosen":
          return "elegida, sin hacer";
        case "made":
          return "hecha";
        case "not-made":
          return "nada corregido";
        case "not-gauged-after":
          return "medir de nuevo";
        case "proved":
          return "medido de nuevo";
        case "ready":
          return "listo";
      }
    },
  },
};
