import type { ByLanguage } from "../words/use-words.js";

interface PairingWords {
  readonly title: string;
  readonly back: string;
  readonly explain: string;
  readonly code: string;
  readonly codeHelp: string;
  readonly device: string;
  readonly letIn: string;
  readonly wrong: string;
  readonly tooOften: string;
  readonly unreachable: string;
  readonly done: string;
  readonly others: string;
  readonly othersHelp: string;
  readonly show: string;
  readonly scan: string;
  readonly orType: (address: string) => string;
  readonly voidAfter: string;
  readonly picture: string;
  readonly letInAlready: string;
  readonly remove: (name: string) => string;
}

export const pairingWords: ByLanguage<PairingWords> = {
  en: {
    title: "Let this device in",
    back: "All cases",
    explain: "The shop's computer shows a code of eight digits. It lets this device see and change the shop's cases.",
    code: "Code",
    codeHelp: "In the settings of the shop's computer, under other devices.",
    device: "Name of this device",
    letIn: "Let it in",
    wrong: "That code does not count, or not any more. Let a new one be shown.",
    tooOften: "Too many tries. Wait a little, then let a new code be shown.",
    unreachable: "The shop's server cannot be reached.",
    done: "This device is in.",
    others: "Other devices",
    othersHelp: "Phones and tablets of this network may take part, each with a code of its own.",
    show: "Show a code",
    scan: "Scan this with the other device's camera.",
    orType: (address) => `Or open ${address} there and type the code:`,
    voidAfter: "It counts for five minutes and for one device.",
    picture: "Address and code as a picture to scan",
    letInAlready: "Let in already",
    remove: (name) => `Shut out ${name}`,
  },
  es: {
    title: "Dar acceso a este dispositivo",
    back: "Todos los casos",
    explain: "El ordenador del taller muestra un código de ocho cifras. Permite a este dispositivo ver y cambiar los casos del taller.",
    code: "Código",
    codeHelp: "En los ajustes del ordenador del taller, en otros dispositivos.",
    device: "Nombre de este dispositivo",
    letIn: "Dar acceso",
    wrong: "Ese código no vale, o ya no. Pida que se muestre otro.",
    tooOften: "Demasiados intentos. Espere un poco y pida que se muestre otro código.",
    unreachable: "No se alcanza el servidor del taller.",
    done: "Este dispositivo tiene acceso.",
    others: "Otros dispositivos",
    othersHelp: "Teléfonos y tabletas de esta red pueden participar, cada uno con su código.",
    show: "Mostrar un código",
    scan: "Léalo con la cámara del otro dispositivo.",
    orType: (address) => `O abra allí ${address} y escriba el código:`,
    voidAfter: "Vale cinco minutos y para un solo dispositivo.",
    picture: "Dirección y código como imagen para leer",
    letInAlready: "Con acceso",
    remove: (name) => `Quitar el acceso a ${name}`,
  },
};
