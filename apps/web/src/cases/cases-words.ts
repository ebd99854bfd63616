import type { ByLanguage } from "../words/use-words.js";

interface CasesWords {
  readonly title: string;
  readonly newCase: string;
  readonly openFile: string;
  readonly dropHere: string;
  readonly search: string;
  readonly none: string;
  readonly noneHelp: string;
  readonly noneFound: string;
  readonly noneAway: string;
  readonly examples: string;
  readonly examplesHelp: string;
  readonly example: { readonly [name: string]: string };
  readonly untitled: string;
  readonly gauged: string;
  readonly corrected: string;
  readonly proved: string;
  readonly not: string;
  readonly onServer: string;
  readonly waiting: string;
  readonly toChoose: string;
  readonly more: (title: string) => string;
  readonly exportFile: string;
  readonly putAway: string;
  readonly bringBack: string;
  readonly wasPutAway: (title: string) => string;
  readonly undo: string;
  readonly close: string;
  readonly showAway: string;
  readonly showCurrent: string;
  readonly notRead: (file: string) => string;
  readonly isHere: string;
  readonly isHereHelp: string;
  readonly openHere: string;
  readonly addCopy: string;
  readonly copyOf: (title: string) => string;
  readonly unreachable: string;
}

export const casesWords: ByLanguage<CasesWords> = {
  en: {
    title: "Cases",
    newCase: "New case",
    openFile: "Open a case file",
    dropHere: "Drop the case file here",
    search: "Search",
    none: "No cases yet",
    noneHelp: "Start one for the vehicle on the lift, or open an example to look around.",
    noneFound: "No case has these words.",
    noneAway: "Nothing is put away.",
    examples: "Examples",
    examplesHelp: "Vehicles of an invented fleet. Opening one puts a copy among your cases.",
    example: {
      "one-piece": "One-piece shaft",
      "two-piece": "Two-piece shaft with a support bearing",
      "three-piece": "Three-piece shaft",
      "four-wheel-drive": "Four-wheel drive",
      corrected: "Corrected and gauged again",
    },
    untitled: "Untitled case",
    gauged: "gauged",
    corrected: "corrected",
    proved: "proved",
    not: "not",
    onServer: "on the server",
    waiting: "not sent yet",
    toChoose: "to choose",
    more: (title) => `More about ${title}`,
    exportFile: "Save as a file",
    putAway: "Put away",
    bringBack: "Bring back",
    wasPutAway: (title) => `Put away: ${title}`,
    undo: "Undo",
    close: "Close",
    showAway: "Show what is put away",
    showCurrent: "Back to the cases at hand",
    notRead: (file) => `${file} cannot be opened as a case`,
    isHere: "This case is here already",
    isHereHelp: "The file and the case on this device differ.",
    openHere: "Open the one that is here",
    addCopy: "Add the file as a copy",
    copyOf: (title) => `${title} (copy)`,
    unreachable: "This case is on the server, and the server cannot be reached.",
  },
  es: {
    title: "Casos",
    newCase: "Caso nuevo",
    openFile: "Abrir un archivo de caso",
    dropHere: "Suelte aquí el archivo de caso",
    search: "Buscar",
    none: "Aún no hay casos",
    noneHelp: "Empiece uno para el vehículo del elevador, o abra un ejemplo para explorar.",
    noneFound: "Ningún caso tiene estas palabras.",
    noneAway: "No hay nada archivado.",
    examples: "Ejemplos",
    examplesHelp: "Vehículos de una flota inventada. Al abrir uno se copia entre sus casos.",
    example: {
      "one-piece": "Árbol de una pieza",
      "two-piece": "Árbol de dos piezas con apoyo central",
      "three-piece": "Árbol de tres piezas",
      "four-wheel-drive": "Tracción a las cuatro ruedas",
      corrected: "Corregido y medido de nuevo",
    },
    untitled: "Caso sin título",
    gauged: "medido",
    corrected: "corregido",
    proved: "comprobado",
    not: "no",
    onServer: "en el servidor",
    waiting: "sin enviar",
    toChoose: "por elegir",
    more: (title) => `Más sobre ${title}`,
    exportFile: "Guardar como archivo",
    putAway: "Archivar",
    bringBack: "Recuperar",
    wasPutAway: (title) => `Archivado: ${title}`,
    undo: "Deshacer",
    close: "Cerrar",
    showAway: "Mostrar lo archivado",
    showCurrent: "Volver a los casos en curso",
    notRead: (file) => `${file} no se puede abrir como caso`,
    isHere: "Este caso ya está aquí",
    isHereHelp: "El archivo y el caso de este dispositivo difieren.",
    openHere: "Abrir el que está aquí",
    addCopy: "Añadir el archivo como copia",
    copyOf: (title) => `${title} (copia)`,
    unreachable: "Este caso está en el servidor, y no se alcanza el servidor.",
  },
};
