import type { RunsToward, VehicleSide } from "@halfturn/casefile";
import { useWords } from "../../../words/use-words.js";
import { vehicleEndOf } from "../model/ends.js";
import { gaugeWords } from "../words/gauge-catalogue.js";
import styles from "./place-drawing.module.css";

/** Not to scale: enough to be seen. */
const ASIDE = 26;

/** A shaft from above, the front of the vehicle on the left hand, so that the vehicle's left lies below. */
export function PlanDrawing({ runs, toward }: { readonly runs: RunsToward; readonly toward: VehicleSide | null }) {
  const words = useWords(gaugeWords);
  const driven = vehicleEndOf(runs, "driven-end") === "rear" ? 310 : 104;
  const source = 414 - driven;
  const aside = toward === null ? 0 : toward === "left" ? ASIDE : -ASIDE;
  return (
    <svg className={styles.drawing} viewBox="0 0 360 128" aria-hidden="true">
      <text className={styles.side} x="6" y="68">
        {`◂ ${words.vehicleEnd.front}`}
      </text>
      <text className={styles.side} x="180" y="16" textAnchor="middle">
        {`▴ ${words.toward.right}`}
      </text>
      <text className={styles.side} x="180" y="124" textAnchor="middle">
        {`▾ ${words.toward.left}`}
      </text>
      <line className={styles.level} x1="104" y1="64" x2="342" y2="64" />
      <g className={styles.metal}>
        <path d={`M ${source} 56 L ${driven} ${56 + aside} v 16 L ${source} 72 z`} />
        <circle cx={source} cy="64" r="7" />
        <circle cx={driven} cy={64 + aside} r="7" />
      </g>
      {aside === 0 ? null : (
        <g className={styles.lower}>
          <path
            d={`M ${driven + (driven > source ? 18 : -18)} 64 v ${aside} m -7 ${-Math.sign(aside) * 8} l 7 ${Math.sign(aside) * 8} l 7 ${-Math.sign(aside) * 8}`}
          />
        </g>
      )}
    </svg>
  );
}
