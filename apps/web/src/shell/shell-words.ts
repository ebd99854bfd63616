import type { ByLanguage } from "../words/use-words.js";

interface ShellWords {
  readonly offline: string;
  readonly offlineWaiting: (cases: number) => string;
  readonly notPaired: string;
  readonly letIn: string;
  readonly update: string;
  readonly updateNow: string;
  readonly noPage: string;
  readonly noPageHelp: string;
  readonly allCases: string;
}

export const shellWords: ByLanguage<ShellWords> = {
  en: {
    offline: "No connection to the shop's server. You can go on working.",
    offlineWaiting: (cases) => `No connection: ${cases === 1 ? "1 case waits" : `${cases} cases wait`} here to be sent.`,
    notPaired: "The shop does not know this device yet. What you do is kept here.",
    letIn: "Let it in",
    update: "A newer version is ready.",
    updateNow: "Start it",
    noPage: "There is no such page",
    noPageHelp: "The address may be mistyped, or come from another version. Every case is in the list.",
    allCases: "All cases",
  },
  es: {
    offline: "Sin conexión con el servidor del taller. Puede seguir trabajando.",
    offlineWaiting: (cases) => `Sin conexión: ${cases === 1 ? "1 caso espera" : `${cases} casos esperan`} aquí para enviarse.`,
    notPaired: "El taller aún no conoce este dispositivo. Lo que haga se guarda aquí.",
    letIn: "Dar acceso",
    update: "Hay una versión más nueva.",
    updateNow: "Iniciarla",
    noPage: "Esta página no existe",
    noPageHelp: "Quizá la dirección está mal escrita o es de otra versión. Todos los casos están en la lista.",
    allCases: "Todos los casos",
  },
};
