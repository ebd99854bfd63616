import type { ByLanguage } from "../../words/use-words.js";

interface ConflictWords {
  readonly notice: (fields: number) => string;
  readonly choose: string;
  readonly title: string;
  readonly explain: string;
  readonly mine: string;
  readonly theirs: string;
  readonly before: string;
  readonly nothing: string;
  readonly yes: string;
  readonly no: string;
  readonly close: string;
  readonly allMine: string;
  readonly allTheirs: string;
  readonly refused: (why: string) => string;
}

export const conflictWords: ByLanguage<ConflictWords> = {
  en: {
    notice: (fields) =>
      fields === 1 ? "One field was changed here and on another device." : `${fields} fields were changed here and on another device.`,
    choose: "Choose",
    title: "Which one counts?",
    explain: "Both are kept until you choose. Nothing of this case is sent before.",
    mine: "This device",
    theirs: "The other device",
    before: "It was",
    nothing: "taken out",
    yes: "yes",
    no: "no",
    close: "Later",
    allMine: "All from this device",
    allTheirs: "All from the other",
    refused: (why) => `The server does not take this case as it is: ${why}`,
  },
  es: {
    notice: (fields) =>
      fields === 1 ? "Un campo se cambió aquí y en otro dispositivo." : `${fields} campos se cambiaron aquí y en otro dispositivo.`,
    choose: "Elegir",
    title: "¿Cuál vale?",
    explain: "Se guardan los dos hasta que elija. Antes no se envía nada de este caso.",
    mine: "Este dispositivo",
    theirs: "El otro dispositivo",
    before: "Antes",
    nothing: "quitado",
    yes: "sí",
    no: "no",
    close: "Después",
    allMine: "Todo de este dispositivo",
    allTheirs: "Todo del otro",
    refused: (why) => `El servidor no acepta este caso como está: ${why}`,
  },
};
