export * from "./driveline/driveline-picture.js";
export * from "./driveline/plan-view.js";
export * from "./driveline/side-view.js";
export * from "./figure-labels.js";
export type { FigureOptions } from "./figure-options.js";
export type { ThemeName } from "./theme.js";
