import type { FigureOptions, ThemeName } from "@halfturn/figures";
import { figureLabelsOf } from "@halfturn/figures";
import { useMemo } from "react";
import type { Settings } from "../device/settings.js";
import { Drawing } from "./drawing.js";
import styles from "./figure.module.css";
import { useWidth } from "./use-width.js";

const THEMES: Readonly<Record<Settings["theme"], ThemeName>> = { light: "light", dark: "dark", contrast: "print" };

/** How figures are drawn on this device, for a width. */
export const figureOptions = ({ language, units, theme }: Settings, width: number): FigureOptions => ({
  labels: figureLabelsOf(language, units),
  theme: THEMES[theme],
  width,
});

export interface FigureProps {
  readonly settings: Settings;
  /** A stand-alone SVG for these options; keep it stable while nothing it draws has changed. */
  readonly draw: (options: FigureOptions) => string;
}

/** A figure as wide as its place; it is drawn anew, not stretched, so that its text stays readable. */
export const Figure = ({ settings, draw }: FigureProps) => {
  const [ref, width] = useWidth();
  const svg = useMemo(() => (width === 0 ? "" : draw(figureOptions(settings, width))), [draw, settings, width]);
  return (
    <div ref={ref} className={styles.figure}>
      <Drawing svg={svg} />
    </div>
  );
};
