import type { ByLanguage } from "../../words/use-words.js";

export interface ReportPageWords {
  readonly title: string;
  readonly language: string;
  readonly languages: { readonly en: string; readonly es: string };
  readonly paper: string;
  readonly papers: { readonly a4: string; readonly letter: string };
  readonly pdf: string;
  readonly fetching: string;
  readonly print: string;
  readonly page: string;
  readonly file: string;
  readonly saved: (name: string) => string;
  readonly offline: string;
  readonly unknown: string;
  readonly refused: string;
  readonly older: string;
  readonly preview: string;
  readonly working: string;
  readonly failed: string;
  readonly gaugeFirst: string;
  readonly gaugeFirstHelp: string;
}

export const reportWords: ByLanguage<ReportPageWords> = {
  en: {
    title: "Hand it over",
    language: "Language of the report",
    languages: { en: "English", es: "Español" },
    paper: "Paper",
    papers: { a4: "A4", letter: "Letter" },
    pdf: "Download the PDF",
    fetching: "Fetching the PDF",
    print: "Print",
    page: "Save as a web page",
    file: "Save the case file",
    saved: (name) => `${name} is saved.`,
    offline:
      "The shop's server makes the PDF and cannot be reached. Print works without it, also into a PDF, and so does saving as a web page.",
    unknown: "The shop's server does not have this case yet. Print works without it, also into a PDF, and so does saving as a web page.",
    refused: "The shop's server could not make the PDF. Print works without it, also into a PDF, and so does saving as a web page.",
    older: "The shop's server has an older state of this case: what was changed last on this device is not in its PDF yet.",
    preview: "What stands in it",
    working: "Writing the report",
    failed: "The report could not be written. Nothing of the case is lost.",
    gaugeFirst: "Nothing to report yet",
    gaugeFirstHelp: "As soon as a driveline is gauged, its report stands here.",
  },
  es: {
    title: "Entregarlo",
    language: "Idioma del informe",
    languages: { en: "English", es: "Español" },
    paper: "Papel",
    papers: { a4: "A4", letter: "Carta" },
    pdf: "Descargar el PDF",
    fetching: "Trayendo el PDF",
    print: "Imprimir",
    page: "Guardar como página web",
    file: "Guardar el archivo del caso",
    saved: (name) => `${name} está guardado.`,
    offline:
      "El PDF lo hace el servidor del taller y no se le alcanza. Sin él se puede imprimir, también a un PDF, o guardar como página web.",
    unknown: "El servidor del taller aún no tiene este caso. Sin él se puede imprimir, también a un PDF, o guardar como página web.",
    refused: "El servidor del taller no pudo hacer el PDF. Sin él se puede imprimir, también a un PDF, o guardar como página web.",
    older: "El servidor del taller tiene un estado anterior del caso: lo último que se cambió en este dispositivo aún no está en su PDF.",
    preview: "Qué contiene",
    working: "Escribiendo el informe",
    failed: "No se pudo escribir el informe. No se ha perdido nada del caso.",
    gaugeFirst: "Aún no hay nada que informar",
    gaugeFirstHelp: "En cuanto se mida una línea de transmisión, aquí estará su informe.",
  },
};
