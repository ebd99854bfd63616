import type { RunsToward, VehicleSide } from "@halfturn/casefile";
import type { ReactNode } from "react";
import { useWords } from "../../../words/use-words.js";
import { type ScreenSide, type ShaftEnd, screenSideOf, vehicleEndOf } from "../model/ends.js";
import type { ReadingStep } from "../model/step.js";
import { gaugeWords } from "../words/gauge-catalogue.js";
import { Gauge } from "./gauge-box.js";
import styles from "./place-drawing.module.css";
import { Axle, Cross, Housing, Tube } from "./shaft-shapes.js";

export interface PlaceDrawingProps {
  readonly step: ReadingStep;
  readonly runs: RunsToward;
  readonly side: VehicleSide;
  readonly isFace: boolean;
  readonly chosen: ShaftEnd | null;
  /** What the display of the drawn gauge shows. */
  readonly display: string;
}

/** Not to scale: steep enough to be seen at arm's length. */
const TILT_DEG = 6;
const GAUGE_OFF_MIDDLE = 66;

/** Where the gauge goes and which end is lower, as one sees it from the side one is on. The words stand beside it, so that it is not read aloud. */
export function PlaceDrawing({ step, runs, side, isFace, chosen, display }: PlaceDrawingProps) {
  const words = useWords(gaugeWords);
  const hand = (end: ShaftEnd): ScreenSide => screenSideOf(vehicleEndOf(runs, end), side);
  const toward = (end: ShaftEnd): 1 | -1 => (hand(end) === "right" ? 1 : -1);
  const tilt = chosen === null ? 0 : toward(chosen) * TILT_DEG;
  const front = screenSideOf("front", side);
  return (
    <svg className={styles.drawing} viewBox="0 0 360 118" aria-hidden="true">
      <text className={styles.side} x={front === "left" ? 6 : 354} y="14" textAnchor={front === "left" ? "start" : "end"}>
        {front === "left" ? `◂ ${words.vehicleEnd.front}` : `${words.vehicleEnd.front} ▸`}
      </text>
      <text className={styles.side} x={front === "left" ? 354 : 6} y="14" textAnchor={front === "left" ? "end" : "start"}>
        {front === "left" ? `${words.vehicleEnd.rear} ▸` : `◂ ${words.vehicleEnd.rear}`}
      </text>
      <line className={styles.level} x1="18" y1="68" x2="342" y2="68" />
      {step.kind === "pair" ? (
        <Pair downstream={toward("driven-end")} tilt={tilt} display={display} />
      ) : (
        <g transform={`rotate(${tilt} 180 68)`}>
          <Shaft step={step} drivenHand={toward("driven-end")} isFace={isFace} display={display} />
        </g>
      )}
      {chosen === null ? null : <LowerMark x={180 + toward(chosen) * 158} />}
    </svg>
  );
}

interface ShaftProps {
  readonly step: ReadingStep & { readonly kind: "place" };
  readonly drivenHand: 1 | -1;
  readonly isFace: boolean;
  readonly display: string;
}

function Shaft({ step, drivenHand, isFace, display }: ShaftProps): ReactNode {
  if (step.shaft === "source") {
    return (
      <>
        <Housing at={180 - drivenHand * 20} away={-drivenHand as 1 | -1} />
        {isFace ? (
          <Gauge x={180 + drivenHand * 26} y={68} upright display={display} />
        ) : (
          <Gauge x={180 - drivenHand * 52} y={34} display={display} />
        )}
      </>
    );
  }
  if (step.shaft === "driven") {
    return (
      <>
        <Axle at={180 + drivenHand * 20} away={drivenHand} />
        {isFace ? (
          <Gauge x={180 - drivenHand * 26} y={68} upright display={display} />
        ) : (
          <Gauge x={180 + drivenHand * 52} y={41} display={display} />
        )}
      </>
    );
  }
  const off = step.place === "along" ? 0 : drivenHand * (step.place === "driven-end" ? GAUGE_OFF_MIDDLE : -GAUGE_OFF_MIDDLE);
  const face = step.place === "along" ? drivenHand * 130 : Math.sign(off) * 130;
  return (
    <>
      <Tube from={70} to={290} />
      <Cross x={46} />
      <Cross x={314} />
      {isFace ? <Gauge x={180 + face * 0.86} y={68} upright display={display} /> : <Gauge x={180 + off} y={41} display={display} />}
    </>
  );
}

/** Zeroed on the first shaft, read on the second. */
const Pair = ({ downstream, tilt, display }: { readonly downstream: 1 | -1; readonly tilt: number; readonly display: string }) => (
  <>
    <Tube from={180 - downstream * 26} to={180 - downstream * 160} />
    <Gauge x={180 - downstream * 92} y={41} display="0.0" quiet />
    <g transform={`rotate(${tilt} 180 68)`}>
      <Tube from={180 + downstream * 26} to={180 + downstream * 160} />
      <Gauge x={180 + downstream * 92} y={41} display={display} />
    </g>
    <Cross x={180} />
  </>
);

const LowerMark = ({ x }: { readonly x: number }) => (
  <g className={styles.lower}>
    <path d={`M ${x} 93 v 20 m -8 -8 l 8 8 l 8 -8`} />
  </g>
);
