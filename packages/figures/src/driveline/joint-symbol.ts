import type { JointKind } from "@halfturn/engine/kinematics";
import { offset, type Point } from "../svg/point.js";
import { circle, line, polygon } from "../svg/shapes.js";
import type { Theme } from "../theme.js";
import { drawYoke, YOKE_REACH } from "./yoke.js";

export interface JointDrawing {
  readonly kind: JointKind;
  readonly centre: Point;
  readonly slopeIn: number;
  readonly slopeOut: number;
  readonly size: number;
  /** Turn of the driving yoke about its shaft; 0 = its fork shows fully. */
  readonly turn: number;
  readonly dashed: boolean;
}

/** How far from the centre the shafts begin, by kind, in pixels at size 1. */
export const jointReach = (kind: JointKind): number => (kind === "double-cross" ? YOKE_REACH + 5 : kind === "cross" ? YOKE_REACH : 12);

function cross(centre: Point, { slopeIn, slopeOut, size, turn, dashed }: JointDrawing, theme: Theme, small = 1): string {
  const driving = { centre, slope: slopeIn + Math.PI, size: size * small, opening: Math.abs(Math.cos(turn)), dashed };
  const driven = { centre, slope: slopeOut, size: size * small, opening: Math.abs(Math.sin(turn)), dashed };
  // The yoke that shows its fork carries the pin across the picture; the other one lies on top of it, end on.
  const [under, over] = driving.opening >= driven.opening ? [driving, driven] : [driven, driving];
  const half = 9.5 * size * small * under.opening;
  const pin = line(offset(centre, under.slope, 0, half), offset(centre, under.slope, 0, -half), { stroke: theme.ink, "stroke-width": 2 });
  return drawYoke(under, theme) + pin + drawYoke(over, theme) + circle(centre, 1.8 * size, { fill: theme.ink });
}

/** Distinct drawn symbols: forks and cross, two of them in a cage, a housing with balls, a pack of discs. */
export function jointSymbol(joint: JointDrawing, theme: Theme): string {
  const { kind, centre, slopeIn, slopeOut, size } = joint;
  const middle = (slopeIn + slopeOut) / 2;
  const stroke = { stroke: theme.ink, "stroke-width": 1.8 } as const;
  switch (kind) {
    case "cross":
      return cross(centre, joint, theme);
    case "double-cross": {
      const apart = 8 * size;
      const first = offset(centre, middle, -apart);
      const second = offset(centre, middle, apart);
      const h = 11.5 * size;
      const cage = polygon(
        [
          offset(first, middle, -4 * size, h),
          offset(second, middle, 4 * size, h),
          offset(second, middle, 4 * size, -h),
          offset(first, middle, -4 * size, -h),
        ],
        { fill: theme.tube, ...stroke, "stroke-linejoin": "round" },
      );
      const crosses = [first, second].map(
        (c, k) =>
          drawYoke(
            {
              centre: c,
              slope: k === 0 ? slopeIn + Math.PI : slopeOut,
              size: size * 0.72,
              opening: Math.abs(Math.cos(joint.turn)),
              dashed: joint.dashed,
            },
            theme,
          ) + circle(c, 2.6 * size, { fill: theme.ink }),
      );
      return cage + crosses.join("");
    }
    case "ball": {
      const balls = Array.from({ length: 6 }, (_, k) =>
        circle(offset(centre, middle + (Math.PI * k) / 3, 7 * size), 2 * size, { fill: theme.ink }),
      );
      return (
        circle(centre, 11 * size, { fill: theme.tube, ...stroke, "stroke-width": 2.2 }) +
        circle(centre, 3.6 * size, { fill: theme.background, ...stroke }) +
        balls.join("")
      );
    }
    case "flexible": {
      const disc = (along: number): string => {
        const c = offset(centre, middle, along * size);
        return line(offset(c, middle, 0, 11 * size), offset(c, middle, 0, -11 * size), { ...stroke, "stroke-linecap": "round" });
      };
      const flange = (slope: number): string => {
        const c = offset(centre, slope, 8 * size);
        return line(offset(c, slope, 0, 8 * size), offset(c, slope, 0, -8 * size), {
          ...stroke,
          "stroke-width": 3.4,
          "stroke-linecap": "round",
        });
      };
      return flange(slopeIn + Math.PI) + flange(slopeOut) + [-3, 0, 3].map(disc).join("");
    }
  }
}
