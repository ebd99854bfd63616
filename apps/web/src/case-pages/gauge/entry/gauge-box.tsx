import styles from "./place-drawing.module.css";

export interface GaugeProps {
  readonly x: number;
  readonly y: number;
  readonly display: string;
  /** Standing across a face. */
  readonly upright?: boolean;
  /** Shown for its place only. */
  readonly quiet?: boolean;
}

/** The inclinometer, its feet on the metal, showing what was typed. */
export const Gauge = ({ x, y, display, upright = false, quiet = false }: GaugeProps) => (
  <g className={quiet ? styles.quietGauge : styles.gauge} transform={`translate(${x} ${y})`}>
    {upright ? <rect x="-17" y="-38" width="34" height="76" rx="5" /> : <rect x="-38" y="-17" width="76" height="32" rx="5" />}
    <rect
      className={styles.display}
      x={upright ? -14 : -28}
      y={upright ? -14 : -11}
      width={upright ? 28 : 56}
      height={upright ? 28 : 20}
      rx="2"
    />
    <text className={styles.digits} x="0" y={upright ? 5 : 5} textAnchor="middle" fontSize={upright ? (display.length > 3 ? 11 : 13) : 17}>
      {display === "" ? "–" : display.slice(0, upright ? 4 : 6)}
    </text>
  </g>
);
