import type { Numbers } from "@halfturn/words";
import { useEffect, useRef, useState } from "react";
import { Slider, SliderThumb, SliderTrack } from "react-aria-components";
import { Button } from "../../../controls/button.js";
import { useWidth } from "../../../controls/use-width.js";
import { useWords } from "../../../words/use-words.js";
import { envelope } from "../../../worker/listening/listening-client.js";
import type { Envelope, ReadChannels } from "../../../worker/listening/listening-types.js";
import { recordWords } from "../words/record-catalogue.js";
import styles from "./pictures.module.css";

const HEIGHT = 120;

export interface WaveformProps {
  readonly read: ReadChannels;
  /** Index of the channel that is shown. */
  readonly channel: number;
  readonly stretch: readonly [number, number] | null;
  readonly onStretch: (stretch: readonly [number, number] | null) => void;
  readonly numbers: Numbers;
  /** Anything that changes when the colours do. */
  readonly theme: string;
}

/** The vibration over time, and two handles on it that choose a stretch. */
export function Waveform({ read, channel, stretch, onStretch, numbers, theme }: WaveformProps) {
  const words = useWords(recordWords).heard;
  const [ref, width] = useWidth();
  const canvas = useRef<HTMLCanvasElement>(null);
  const [shape, setShape] = useState<Envelope | null>(null);
  const [dragged, setDragged] = useState<readonly [number, number] | null>(null);
  const { start, seconds } = read;
  const end = start + seconds;
  const [from, to] = dragged ?? stretch ?? [start, end];
  useEffect(() => {
    let isWanted = true;
    if (width > 0) void envelope(channel, start, end, width).then((made) => isWanted && setShape(made));
    return () => {
      isWanted = false;
    };
  }, [channel, start, end, width]);
  // biome-ignore lint/correctness/useExhaustiveDependencies: the colours are read from the page, which changes with the theme
  useEffect(() => {
    if (canvas.current && shape) draw(canvas.current, shape, width);
  }, [shape, width, theme]);
  const settle = (next: number | number[]): void => {
    setDragged(null);
    const [low = start, high = end] = next as number[];
    onStretch(low <= start && high >= end ? null : [low, high]);
  };
  return (
    <div className={styles.picture}>
      <h3>{words.waveform}</h3>
      <Slider
        className={styles.slider ?? ""}
        aria-label={words.waveform}
        minValue={start}
        maxValue={end}
        step={0.1}
        value={[from, to]}
        onChange={(next) => setDragged(next as unknown as readonly [number, number])}
        onChangeEnd={settle}
      >
        <div ref={ref}>
          <canvas ref={canvas} className={styles.canvas} style={{ height: HEIGHT }} />
        </div>
        <SliderTrack className={styles.track ?? ""}>
          <div
            className={styles.chosen}
            style={{ left: `${((from - start) / seconds) * 100}%`, width: `${((to - from) / seconds) * 100}%` }}
          />
          <SliderThumb index={0} className={styles.thumb ?? ""} aria-label={words.stretchFrom} />
          <SliderThumb index={1} className={styles.thumb ?? ""} aria-label={words.stretchTo} />
        </SliderTrack>
      </Slider>
      <div className={styles.row}>
        <strong>{words.stretch(numbers.plain(from, 1), numbers.plain(to, 1))}</strong>
        {stretch === null ? null : <Button onPress={() => onStretch(null)}>{words.wholeStretch}</Button>}
      </div>
      <p className={styles.quiet}>{words.waveformHelp}</p>
    </div>
  );
}

/** A column for each pixel, from the least to the greatest of its samples. */
function draw(canvas: HTMLCanvasElement, { low, high }: Envelope, width: number): void {
  const sharp = window.devicePixelRatio;
  canvas.width = Math.round(width * sharp);
  canvas.height = Math.round(HEIGHT * sharp);
  const context = canvas.getContext("2d");
  if (!context) return;
  let [least, greatest] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  for (const value of low) least = Math.min(least, value);
  for (const value of high) greatest = Math.max(greatest, value);
  const tall = greatest > least ? canvas.height / (greatest - least) : 0;
  const wide = canvas.width / low.length;
  context.fillStyle = getComputedStyle(canvas).color;
  for (let k = 0; k < low.length; k++) {
    const top = (greatest - (high[k] as number)) * tall;
    context.fillRect(k * wide, top, Math.max(1, wide), Math.max(sharp, (greatest - (low[k] as number)) * tall - top));
  }
}
