import styles from "./place-drawing.module.css";

const MIDDLE = 68;

/** A propeller-shaft tube with its weld seams. */
export const Tube = ({ from, to }: { readonly from: number; readonly to: number }) => {
  const [left, right] = [Math.min(from, to), Math.max(from, to)];
  return (
    <g className={styles.metal}>
      <rect x={left} y={MIDDLE - 12} width={right - left} height="24" rx="2" />
      <path d={`M ${left + 9} ${MIDDLE - 12} v 24 M ${right - 9} ${MIDDLE - 12} v 24`} />
    </g>
  );
};

/** A cross joint between two yokes. */
export const Cross = ({ x }: { readonly x: number }) => (
  <g className={styles.metal}>
    <path d={`M ${x - 24} ${MIDDLE - 12} h 16 q 12 0 12 7 v 10 q 0 7 -12 7 h -16 z`} />
    <path d={`M ${x + 24} ${MIDDLE - 9} h -18 q -10 0 -10 5 v 8 q 0 5 10 5 h 18 z`} />
    <circle cx={x} cy={MIDDLE} r="6" />
  </g>
);

/** The tail of a transmission or transfer case, ending in a flange. `away` is the hand it reaches to. */
export const Housing = ({ at, away }: { readonly at: number; readonly away: 1 | -1 }) => (
  <g className={styles.metal}>
    <path
      d={`M ${at} ${MIDDLE - 16} h ${away * 70} l ${away * 34} -14 h ${away * 40} v 60 h ${-away * 40} l ${-away * 34} -14 h ${-away * 70} z`}
    />
    <rect className={styles.flange} x={Math.min(at, at - away * 14)} y={MIDDLE - 32} width="14" height="64" rx="1.5" />
  </g>
);

/** The nose of an axle with its pinion flange. */
export const Axle = ({ at, away }: { readonly at: number; readonly away: 1 | -1 }) => (
  <g className={styles.metal}>
    <path d={`M ${at} ${MIDDLE - 11} h ${away * 64} l ${away * 20} -14 v 50 l ${-away * 20} -14 h ${-away * 64} z`} />
    <circle cx={at + away * 108} cy={MIDDLE} r="34" />
    <circle cx={at + away * 108} cy={MIDDLE} r="13" />
    <rect className={styles.flange} x={Math.min(at, at - away * 14)} y={MIDDLE - 32} width="14" height="64" rx="1.5" />
  </g>
);
