import { figureLabelsOf, type MovableView, movableView } from "@halfturn/figures";
import { type KeyboardEvent, type PointerEvent, useMemo, useRef } from "react";
import { Drawing } from "../../../controls/drawing.js";
import { figureOptions } from "../../../controls/figure.js";
import { useWidth } from "../../../controls/use-width.js";
import type { Settings } from "../../../device/settings.js";
import { useWords } from "../../../words/use-words.js";
import type { Subject } from "../../shared/subject.js";
import styles from "./drag-stage.module.css";
import { draggedSteps, type Handle, handlesOf, mostSteps, placeOf, stepsOf, withSteps } from "./handles.js";
import type { Moves } from "./moves.js";
import { whatIfWords } from "./what-if-words.js";

export interface DragStageProps {
  readonly subject: Subject;
  /** The driveline as it would lie; the measured one while nothing is moved. */
  readonly moved: Subject["picture"];
  readonly moves: Moves;
  readonly onMove: (moves: Moves) => void;
  readonly settings: Settings;
}

const RING = 13;
/** Half of what a gloved finger needs. */
const REACH = 26;
const [ROOM_ABOVE, SIDE] = [48, 60];
const KEYS: Readonly<Record<string, number>> = { ArrowUp: 1, ArrowRight: 1, ArrowDown: -1, ArrowLeft: -1, PageUp: 5, PageDown: -5 };

/** Above the ring and its arrows, where a finger does not hide it; below where there is no room; never beyond the sides. */
const besideRing = (x: number, y: number, width: number) => ({
  y: y < ROOM_ABOVE ? 44 : -32,
  textAnchor: x < SIDE ? ("start" as const) : x > width - SIDE ? ("end" as const) : ("middle" as const),
  x: x < SIDE ? -RING : x > width - SIDE ? RING : 0,
});

/** The driveline from the side, its joints and shaft ends to be dragged up and down. */
export const DragStage = ({ subject, moved, moves, onMove, settings }: DragStageProps) => {
  const words = useWords(whatIfWords);
  const [ref, width] = useWidth();
  const { picture, nameOf, catalogue } = subject;
  const view = useMemo(
    () => (width === 0 ? null : movableView(picture, moved, moves.rises, figureOptions(settings, width))),
    [picture, moved, moves.rises, settings, width],
  );
  const held = useRef<{ readonly y: number; readonly steps: number; readonly view: MovableView } | null>(null);
  const { numbers } = catalogue;

  const nameHandle = (handle: Handle): string =>
    handle.kind === "joint" ? words.moveJoint(nameOf(picture.driveline.joints[handle.joint]?.id ?? "")) : words.tilt(nameOf(handle.kind));
  const saidOf = (handle: Handle): string => {
    const steps = stepsOf(moves, handle);
    if (steps === 0) return words.asMeasured;
    const size = handle.kind === "joint" ? numbers.length(Math.abs(steps)) : numbers.gaugedAngle(Math.abs(steps) / 10);
    return steps > 0 ? words.up(size) : words.down(size);
  };
  const to = (handle: Handle, steps: number): void => {
    const next = withSteps(moves, handle, steps);
    // Between two steps nothing is drawn anew.
    if (stepsOf(next, handle) !== stepsOf(moves, handle)) onMove(next);
  };
  const press = (handle: Handle) => (event: PointerEvent<SVGGElement>) => {
    if (!view) return;
    event.currentTarget.setPointerCapture(event.pointerId);
    event.currentTarget.focus();
    held.current = { y: event.clientY, steps: stepsOf(moves, handle), view };
  };
  const drag = (handle: Handle) => (event: PointerEvent<SVGGElement>) => {
    const from = held.current;
    if (from) to(handle, from.steps + draggedSteps(from.view, handle, from.y - event.clientY));
  };
  const release = () => {
    held.current = null;
  };
  const key = (handle: Handle) => (event: KeyboardEvent) => {
    const by = KEYS[event.key];
    if (by === undefined && event.key !== "Home") return;
    event.preventDefault();
    to(handle, by === undefined ? 0 : stepsOf(moves, handle) + by);
  };

  return (
    <div className={styles.stage}>
      <div ref={ref} className={styles.frame}>
        {view ? (
          <>
            <Drawing svg={view.svg} />
            {/* biome-ignore lint/a11y/useSemanticElements: a fieldset cannot lie over a drawing */}
            <svg
              className={styles.handles}
              viewBox={`0 0 ${view.width} ${view.height}`}
              width={view.width}
              height={view.height}
              role="group"
              aria-label={words.hint}
            >
              {handlesOf(picture.driveline.joints.length).map((handle) => {
                const { x, y } = placeOf(view, handle);
                const steps = stepsOf(moves, handle);
                return (
                  <g
                    key={handle.kind === "joint" ? handle.joint : handle.kind}
                    className={styles.handle}
                    role="slider"
                    tabIndex={0}
                    aria-orientation="vertical"
                    aria-label={nameHandle(handle)}
                    aria-valuemin={-mostSteps(handle)}
                    aria-valuemax={mostSteps(handle)}
                    aria-valuenow={steps}
                    aria-valuetext={saidOf(handle)}
                    data-moved={steps === 0 ? undefined : true}
                    transform={`translate(${x} ${y})`}
                    onPointerDown={press(handle)}
                    onPointerMove={drag(handle)}
                    onPointerUp={release}
                    onPointerCancel={release}
                    onKeyDown={key(handle)}
                  >
                    <circle className={styles.reach} r={REACH} />
                    <circle className={styles.ring} r={RING} />
                    <path className={styles.arrows} d="M -5 -18 L 0 -24 L 5 -18 M -5 18 L 0 24 L 5 18" />
                    {steps === 0 ? null : (
                      <text className={styles.size} {...besideRing(x, y, view.width)}>
                        {saidOf(handle)}
                      </text>
                    )}
                  </g>
                );
              })}
            </svg>
          </>
        ) : null}
      </div>
      <p className={styles.note}>
        {words.hint} {view ? `${figureLabelsOf(settings.language).anglesLarger(view.factor)}.` : ""}
        {picture.driveline.sections.some(({ length }) => length === undefined) ? ` ${words.assumed}` : ""}
      </p>
    </div>
  );
};
