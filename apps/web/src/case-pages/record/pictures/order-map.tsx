import type { VibrationPicture } from "@halfturn/figures";
import type { Numbers } from "@halfturn/words";
import { useEffect, useRef } from "react";
import { useWidth } from "../../../controls/use-width.js";
import { useWords } from "../../../words/use-words.js";
import { recordWords } from "../words/record-catalogue.js";
import { amplitudeText as writeAmplitude } from "./amplitude-text.js";
import { colourAt, type MapGround, RANGE_DB, shareOf } from "./colour-map.js";
import styles from "./pictures.module.css";
import { roundTicks } from "./round-ticks.js";

const [HEIGHT, HEAD, LEFT, FOOT] = [260, 30, 40, 24];

/** Smaller is nought in the digits that are shown. */
const LEAST_SAID = 0.0005;

export interface OrderMapProps {
  readonly picture: VibrationPicture;
  readonly ground: MapGround;
  readonly numbers: Numbers;
  /** Of the channel that is mapped; orders that were found are accelerations. */
  readonly amplitudeText: (amplitude: number) => string;
}

/** How hard it shook by order and time, with the vehicle's orders drawn over it and those that fold back. */
export function OrderMap({ picture, ground, numbers, amplitudeText }: OrderMapProps) {
  const words = useWords(recordWords).heard;
  const [ref, width] = useWidth();
  const canvas = useRef<HTMLCanvasElement>(null);
  const orderText = writeAmplitude("acceleration", numbers);
  const { orders, times, marks, folded, amplitudes } = picture;
  const greatest = amplitudes.reduce((most, value) => Math.max(most, value), 0);
  useEffect(() => {
    if (canvas.current) paint(canvas.current, picture, ground, greatest);
  }, [picture, ground, greatest]);
  const wide = Math.max(0, width - LEFT);
  const xOf = (order: number): number => LEFT + ((order - orders[0]) / (orders[1] - orders[0])) * wide;
  // The first moment is at the bottom.
  const yOf = (time: number): number => HEAD + HEIGHT * (1 - (time - times[0]) / (times[1] - times[0]));
  const inside = (at: number): boolean => at >= orders[0] && at <= orders[1];
  return (
    <div className={styles.picture}>
      <h3>{words.map}</h3>
      <div ref={ref} className={styles.mapPlace} style={{ height: HEAD + HEIGHT + FOOT }}>
        <canvas ref={canvas} className={styles.heat} style={{ left: LEFT, top: HEAD, width: wide, height: HEIGHT }} />
        <svg className={styles.over} width={width} height={HEAD + HEIGHT + FOOT} aria-hidden="true">
          {roundTicks(times[1] - times[0], 5).map((tick) => (
            <text key={tick} x={LEFT - 6} y={yOf(times[0] + tick) + 4} className={styles.tick} textAnchor="end">
              {numbers.plain(times[0] + tick, 0)}
            </text>
          ))}
          {roundTicks(orders[1], Math.max(2, Math.floor(wide / 50)))
            .filter(inside)
            .map((tick) => (
              <text key={tick} x={xOf(tick)} y={HEAD + HEIGHT + 17} className={styles.tick} textAnchor="middle">
                {numbers.plain(tick, Number.isInteger(tick) ? 0 : 1)}
              </text>
            ))}
          {marks.map(({ at, verdict }, k) => (
            <g key={`${at} ${marks[k]?.name}`}>
              <line x1={xOf(at)} x2={xOf(at)} y1={HEAD} y2={HEAD + HEIGHT} className={styles.halo} />
              <line x1={xOf(at)} x2={xOf(at)} y1={HEAD} y2={HEAD + HEIGHT} className={verdict ? styles.verdict : styles.mark} />
              <text x={xOf(at)} y={k % 2 === 0 ? 12 : 26} className={styles.number} textAnchor="middle">
                {k + 1}
              </text>
            </g>
          ))}
          {folded.map(({ name, course }) => (
            <polyline
              key={name}
              className={styles.folded}
              points={course
                .filter(({ at }) => inside(at))
                .map(({ time, at }) => `${xOf(at).toFixed(1)},${yOf(time).toFixed(1)}`)
                .join(" ")}
            />
          ))}
        </svg>
      </div>
      <p className={styles.quiet}>
        {words.mapOrders}; {words.mapTime.toLowerCase()}.{" "}
        {words.mapScale(amplitudeText(greatest / 10 ** (RANGE_DB / 20)), amplitudeText(greatest))}.
      </p>
      <ol className={styles.marks}>
        {marks.map(({ name, at, amplitude, verdict }) => (
          <li key={`${name} ${at}`}>
            {verdict ? <strong>{name}</strong> : name}
            {amplitude === null || amplitude < LEAST_SAID ? "" : `: ${orderText(amplitude)}`}
          </li>
        ))}
      </ol>
      {folded.length === 0 ? null : (
        <p>
          {words.folded} {folded.map(({ name }) => name).join(", ")}.
        </p>
      )}
    </div>
  );
}

/** A pixel for each place of the map; the browser makes it as large as its place, without smoothing. */
function paint(canvas: HTMLCanvasElement, { rows, columns, amplitudes }: VibrationPicture, ground: MapGround, greatest: number): void {
  canvas.width = columns;
  canvas.height = rows;
  const context = canvas.getContext("2d");
  if (!context) return;
  const image = context.createImageData(columns, rows);
  for (let row = 0; row < rows; row++) {
    for (let column = 0; column < columns; column++) {
      const colour = colourAt(shareOf(amplitudes[row * columns + column] as number, greatest), ground);
      image.data.set([...colour, 255], ((rows - 1 - row) * columns + column) * 4);
    }
  }
  context.putImageData(image, 0, 0);
}
