import type { ByLanguage } from "../words/use-words.js";

interface SettingsWords {
  readonly title: string;
  readonly back: string;
  readonly theme: string;
  readonly asDevice: string;
  readonly light: string;
  readonly dark: string;
  readonly contrast: string;
  readonly units: string;
  readonly metric: string;
  readonly us: string;
  readonly language: string;
  readonly close: string;
  readonly device: string;
  readonly deviceHelp: string;
}

export const settingsWords: ByLanguage<SettingsWords> = {
  en: {
    title: "Settings",
    back: "Back",
    theme: "Colours",
    asDevice: "As the device",
    light: "Light",
    dark: "Dark",
    contrast: "High contrast",
    units: "Units",
    metric: "Metric",
    us: "US",
    language: "Language",
    close: "Close",
    device: "Name of this device",
    deviceHelp: "Stands beside every change that is sent from here.",
  },
  es: {
    title: "Ajustes",
    back: "Volver",
    theme: "Colores",
    asDevice: "Como el dispositivo",
    light: "Claro",
    dark: "Oscuro",
    contrast: "Alto contraste",
    units: "Unidades",
    metric: "Métricas",
    us: "EE. UU.",
    language: "Idioma",
    close: "Cerrar",
    device: "Nombre de este dispositivo",
    deviceHelp: "Acompaña cada cambio que se envía desde aquí.",
  },
};
