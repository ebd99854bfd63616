import type { FigureLabels } from "./figure-labels.js";
import { THEMES, type Theme, type ThemeName } from "./theme.js";

/** How a figure is to come out. Width in pixels (user units), at least 320; the layout follows it, text stays readable. */
export interface FigureOptions {
  readonly labels: FigureLabels;
  readonly theme?: ThemeName;
  readonly width?: number;
}

/** What every drawing function needs: where it may draw, in what colours and words. */
export interface Sheet {
  readonly labels: FigureLabels;
  readonly theme: Theme;
  readonly width: number;
  readonly left: number;
  readonly right: number;
  /** Too narrow for labels beside one another: lists go below instead. */
  readonly narrow: boolean;
}

const DEFAULT_WIDTH = 720;
const LEAST_WIDTH = 320;
const NARROW = 520;

export function sheetOf({ labels, theme = "light", width = DEFAULT_WIDTH }: FigureOptions): Sheet {
  const wide = Number.isFinite(width) ? Math.max(LEAST_WIDTH, Math.round(width)) : DEFAULT_WIDTH;
  const margin = wide < NARROW ? 14 : 24;
  return { labels, theme: THEMES[theme], width: wide, left: margin, right: wide - margin, narrow: wide < NARROW };
}
