/** What the figure is for: a light screen, a dark screen, or paper. */
export type ThemeName = "light" | "dark" | "print";

export interface Theme {
  readonly background: string;
  readonly ink: string;
  readonly muted: string;
  readonly faint: string;
  readonly tube: string;
  readonly good: string;
  readonly bad: string;
  readonly low: string;
  readonly doubt: string;
  /** Text on a filled verdict mark. */
  readonly onMark: string;
  readonly sourceYoke: string;
  readonly drivenYoke: string;
  /** One for each section or joint, in order. */
  readonly series: readonly string[];
}

/** Okabe and Ito's colour-blind-safe set; on dark ground the two blues change places. Explicit colours, so that any renderer shows the same. */
export const THEMES: Readonly<Record<ThemeName, Theme>> = {
  light: {
    background: "#ffffff",
    ink: "#1d2329",
    muted: "#56616b",
    faint: "#d3dae0",
    tube: "#edf1f4",
    good: "#009e73",
    bad: "#d55e00",
    low: "#0072b2",
    doubt: "#e69f00",
    onMark: "#ffffff",
    sourceYoke: "#0072b2",
    drivenYoke: "#e69f00",
    series: ["#0072b2", "#d98f00", "#b8568f", "#009e73", "#56b4e9", "#d55e00"],
  },
  dark: {
    background: "#14191e",
    ink: "#e8edf1",
    muted: "#a6b1bb",
    faint: "#37414a",
    tube: "#27303a",
    good: "#12b886",
    bad: "#f0803c",
    low: "#56b4e9",
    doubt: "#e69f00",
    onMark: "#14191e",
    sourceYoke: "#56b4e9",
    drivenYoke: "#e69f00",
    series: ["#56b4e9", "#e69f00", "#cc79a7", "#12b886", "#f0e442", "#f0803c"],
  },
  print: {
    background: "#ffffff",
    ink: "#000000",
    muted: "#404040",
    faint: "#c4c4c4",
    tube: "#f1f1f1",
    good: "#007a59",
    bad: "#b84f00",
    low: "#005b8f",
    doubt: "#b87f00",
    onMark: "#ffffff",
    sourceYoke: "#005b8f",
    drivenYoke: "#b87f00",
    series: ["#005b8f", "#b87f00", "#9c4478", "#007a59", "#3d8fc0", "#b84f00"],
  },
};

/** Dashes tell series apart where colour cannot; the first is solid. */
export const SERIES_DASHES: readonly (string | undefined)[] = [undefined, "9 4", "3 3", "10 3 2 3", "14 4"];
