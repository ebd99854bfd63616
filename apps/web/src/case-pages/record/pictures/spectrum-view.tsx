import { type Catalogue, capital, type NameOf } from "@halfturn/words";
import { type MouseEvent, useEffect, useMemo, useState } from "react";
import { Button } from "../../../controls/button.js";
import { useWidth } from "../../../controls/use-width.js";
import { useWords } from "../../../words/use-words.js";
import { spectrum } from "../../../worker/listening/listening-client.js";
import type { Heard, SpectrumView as Lines, ReadChannels } from "../../../worker/listening/listening-types.js";
import { recordWords } from "../words/record-catalogue.js";
import { decimatedByMax, largestPeaks, type Peak, turningAtFrequency } from "./peaks.js";
import styles from "./pictures.module.css";
import { roundTicks } from "./round-ticks.js";

const HEIGHT = 150;
const FOOT = 24;
const PEAKS = 5;
/** Shown at least so far, Hz. */
const LEAST_SHOWN = 60;
/** A tone a line and a half away is still the same, Hz. */
const WITHIN = 0.4;
const TO_KMH = 3.6;

export interface SpectrumViewProps {
  readonly read: ReadChannels;
  readonly channel: number;
  readonly stretch: readonly [number, number] | null;
  /** null until a part was looked for: then the speed of the stretch is not known. */
  readonly heard: Heard | null;
  readonly nameOf: NameOf;
  readonly catalogue: Catalogue;
  /** "85 km/h" of km/h. */
  readonly speedText: (kmh: number) => string;
  /** "0.98 m/s²", or a share of full scale. */
  readonly amplitudeText: (amplitude: number) => string;
}

/** How hard it shook at each frequency; a peak that is tapped says what turns at that rate. */
export function SpectrumView(props: SpectrumViewProps) {
  const { read, channel, stretch, heard, catalogue, amplitudeText } = props;
  const words = useWords(recordWords).heard;
  const [ref, width] = useWidth();
  const [lines, setLines] = useState<Lines | null>(null);
  const [picked, pick] = useState<number | null>(null);
  const [from, to] = stretch ?? [read.start, read.start + read.seconds];
  useEffect(() => {
    let isWanted = true;
    void spectrum(channel, from, to).then((made) => {
      if (isWanted) setLines(made?.ok ? made.value : null);
    });
    return () => {
      isWanted = false;
    };
  }, [channel, from, to]);
  const highest = highestShown(lines, heard);
  const shown = useMemo(() => lines?.amplitudes.subarray(0, Math.ceil(highest / lines.lineSpacing)), [lines, highest]);
  const peaks = useMemo(() => (lines && shown ? largestPeaks(shown, lines.lineSpacing, PEAKS) : []), [lines, shown]);
  // An empty place first: its width is measured once it is there.
  if (!lines || !shown) return <div ref={ref} className={styles.picture} />;
  const greatest = shown.reduce((most, value, k) => (k * lines.lineSpacing < 1 ? most : Math.max(most, value)), 0);
  const xOf = (frequency: number): number => (frequency / highest) * width;
  const columns = decimatedByMax(shown, Math.max(1, Math.floor(width)));
  const yOf = (amplitude: number): number => HEIGHT - (greatest > 0 ? Math.min(1, amplitude / greatest) : 0) * (HEIGHT - 8);
  const outline = [...columns].map((value, k) => `${((k / columns.length) * width).toFixed(1)} ${yOf(value).toFixed(1)}`).join("L");
  const tapped = ({ clientX, currentTarget }: MouseEvent<SVGSVGElement>): void => {
    const at = ((clientX - currentTarget.getBoundingClientRect().left) / width) * highest;
    const nearest = peaks.toSorted((a, b) => Math.abs(a.frequency - at) - Math.abs(b.frequency - at))[0];
    if (nearest) pick(nearest.frequency);
  };
  const number = (value: number): string => catalogue.numbers.plain(value, 1);
  return (
    <div ref={ref} className={styles.picture}>
      <h3>{words.spectrum}</h3>
      <div>
        {/* The buttons below do the same by keys. */}
        <svg className={styles.chart} width={width} height={HEIGHT + FOOT} aria-hidden="true" onClick={tapped}>
          <path d={`M0 ${HEIGHT}L${outline}L${width} ${HEIGHT}Z`} className={styles.area} />
          {picked === null ? null : <line x1={xOf(picked)} x2={xOf(picked)} y1={0} y2={HEIGHT} className={styles.picked} />}
          <line x1={0} x2={width} y1={HEIGHT} y2={HEIGHT} className={styles.axis} />
          {roundTicks(highest, Math.max(2, Math.floor(width / 70))).map((tick) => (
            <text key={tick} x={xOf(tick)} y={HEIGHT + 17} className={styles.tick} textAnchor={tick === 0 ? "start" : "middle"}>
              {catalogue.numbers.plain(tick, 0)}
              {tick === 0 ? " Hz" : ""}
            </text>
          ))}
        </svg>
      </div>
      <p className={styles.quiet}>{words.spectrumHelp}</p>
      <h4>{words.peaks}</h4>
      <div className={styles.row}>
        {peaks.map(({ frequency, amplitude }) => (
          <Button key={frequency} kind={frequency === picked ? "main" : "plain"} onPress={() => pick(frequency)}>
            {words.peak(number(frequency), amplitudeText(amplitude))}
          </Button>
        ))}
      </div>
      <div role="status">{picked === null ? null : <PeakText {...props} frequency={picked} />}</div>
    </div>
  );
}

function highestShown(lines: Lines | null, heard: Heard | null): number {
  const measured = lines ? (lines.amplitudes.length - 1) * lines.lineSpacing : LEAST_SHOWN;
  const orders = heard
    ? heard.parts.flatMap(({ perWheelTurn, orders }) => orders.map(({ order }) => order * perWheelTurn * heard.wheelRate[2]))
    : [];
  return Math.min(measured, Math.max(LEAST_SHOWN, ...orders) * 1.1);
}

function PeakText({ frequency, heard, nameOf, catalogue, speedText }: SpectrumViewProps & Pick<Peak, "frequency">) {
  const words = useWords(recordWords).heard;
  const { orders, numbers } = catalogue;
  const number = (value: number): string => numbers.plain(value, 1);
  if (!heard) return <p>{words.speedFirst}</p>;
  const found = turningAtFrequency(frequency, heard.parts, heard.wheelRate, WITHIN);
  if (found.length === 0) return <p>{words.peakIsNothing(number(frequency))}</p>;
  return (
    <>
      <p>
        <strong>{words.peakIs(number(frequency), speedText(heard.wheelRate[1] * heard.circumference * TO_KMH))}</strong>
      </p>
      <ul className={styles.list}>
        {found.map(({ part, order, frequency: at }) => (
          <li key={`${part} ${order}`}>
            {capital(orders.orderOf(part, order, nameOf))}: {number(at)}&nbsp;Hz
          </li>
        ))}
      </ul>
    </>
  );
}
