import type { ByLanguage } from "../words/use-words.js";

interface ShellWords {
  readonly offline: string;
  readonly offlineWaiting: (cases: number) => string;
  readonly update: string;
  readonly updateNow: string;
}

export const shellWords: ByLanguage<ShellWords> = {
  en: {
    offline: "No connection to the shop's server. You can go on working.",
    offlineWaiting: (cases) =>
      `No connection to the shop's server. Changes of ${cases === 1 ? "1 case are" : `${cases} cases are`} kept here and will be sent.`,
    update: "A newer version is ready.",
    updateNow: "Start it",
  },
  es: {
    offline: "Sin conexión con el servidor del taller. Puede seguir trabajando.",
    offlineWaiting: (cases) =>
      `Sin conexión con el servidor del taller. Los cambios de ${cases === 1 ? "1 caso" : `${cases} casos`} quedan aquí y se enviarán.`,
    update: "Hay una versión más nueva.",
    updateNow: "Iniciarla",
  },
};
