import type { Layout } from "@halfturn/casefile";
import styles from "./layout-picture.module.css";

interface Place {
  readonly x: number;
  readonly y: number;
}

/** One line of shafts, seen from the side: joints from the source to the axle; those with a support hang under the frame. */
interface Line {
  readonly joints: readonly Place[];
  readonly supports: readonly number[];
}

const REAR_AXLE = { x: 272, y: 56 };
const LINES: Readonly<Record<Layout, readonly Line[]>> = {
  "one-piece": [
    {
      joints: [
        { x: 96, y: 40 },
        { x: 236, y: 54 },
      ],
      supports: [],
    },
  ],
  "two-piece": [
    {
      joints: [
        { x: 96, y: 38 },
        { x: 166, y: 42 },
        { x: 236, y: 54 },
      ],
      supports: [1],
    },
  ],
  "three-piece": [
    {
      joints: [
        { x: 96, y: 37 },
        { x: 142, y: 39 },
        { x: 188, y: 44 },
        { x: 236, y: 54 },
      ],
      supports: [1, 2],
    },
  ],
  "four-wheel-drive": [
    {
      joints: [
        { x: 150, y: 42 },
        { x: 236, y: 54 },
      ],
      supports: [],
    },
    {
      joints: [
        { x: 114, y: 46 },
        { x: 76, y: 56 },
      ],
      supports: [],
    },
  ],
};

/** The shape of a driveline as a picture, front of the vehicle to the left; the words beside it say the same. */
export function LayoutPicture({ layout }: { readonly layout: Layout }) {
  const driven = layout === "four-wheel-drive";
  return (
    <svg className={styles.picture} viewBox="0 0 320 96" aria-hidden="true">
      <path className={styles.ground} d="M8 84H312" />
      <circle className={styles.wheel} cx={48} cy={58} r={25} />
      <circle className={styles.wheel} cx={REAR_AXLE.x} cy={58} r={25} />
      <rect className={styles.unit} x={driven ? 62 : 48} y={24} width={driven ? 62 : 44} height={24} rx={5} />
      {driven ? <rect className={styles.unit} x={118} y={32} width={28} height={22} rx={5} /> : null}
      <circle className={styles.axle} cx={REAR_AXLE.x} cy={REAR_AXLE.y + 2} r={9} />
      {driven ? <circle className={styles.axle} cx={48} cy={58} r={9} /> : null}
      {LINES[layout].map(({ joints, supports }, line) => (
        <g key={line === 0 ? "rear" : "front"}>
          <polyline className={styles.shaft} points={joints.map(({ x, y }) => `${x},${y}`).join(" ")} />
          <path className={styles.stub} d={stubs(joints, line === 0)} />
          {supports.map((at) => {
            const { x, y } = joints[at] as Place;
            return <path key={at} className={styles.support} d={`M${x - 12} ${y - 18}h20M${x - 4} ${y - 18}v16`} />;
          })}
          {joints.map(({ x, y }) => (
            <circle key={x} className={styles.joint} cx={x} cy={y} r={5.5} />
          ))}
        </g>
      ))}
    </svg>
  );
}

/** From the last joint to its axle. */
function stubs(joints: readonly Place[], isRear: boolean): string {
  const last = joints.at(-1) as Place;
  return `M${last.x} ${last.y}L${isRear ? REAR_AXLE.x : 48} ${58}`;
}
