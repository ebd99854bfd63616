import type { MotionJson, Quantity, SpeedJson } from "@halfturn/casefile";
import type { Limit, LimitSet } from "@halfturn/engine/limits";
import { verdictOf } from "@halfturn/engine/uncertainty";
import type { NameOf } from "@halfturn/words";
import { angleOf } from "./quantity-text.js";
import { table } from "./table.js";
import { verdictText } from "./verdict-text.js";
import type { View } from "./view.js";

/** Transmission error, and accelerations at the highest shaft speed against their limits. */
export function motionLines(motion: MotionJson, limits: LimitSet, nameOf: NameOf, view: View): readonly string[] {
  const { labels, numbers, terminal } = view.words;
  const top = motion.speeds.at(-1);
  const heading = top ? `${labels.motion} ${terminal.analysed.atSpeed(numbers.speed(top.shaftRpm))}` : labels.motion;
  const errors = [
    [labels.transmissionError, angleOf(motion.transmissionErrorPeakToPeakDeg, numbers, labels.notKnown)],
    [labels.secondOrder, angleOf(motion.secondOrderDeg, numbers, labels.notKnown)],
  ];
  return [
    view.paint("strong", heading),
    ...table(errors, ["left", "right"]),
    ...(top ? table(accelerationRows(top, motion, limits, nameOf, view), ["left", "right", "left", "right"]) : []),
    `  ${labels.verdict}: ${verdictText(motion.verdict, view)}`,
  ];
}

function accelerationRows(
  top: SpeedJson,
  motion: MotionJson,
  limits: LimitSet,
  nameOf: NameOf,
  view: View,
): readonly (readonly string[])[] {
  const { labels, numbers } = view.words;
  const row = (name: string, quantity: Quantity, limit: Limit<number>): readonly string[] => [
    name,
    quantity === null ? labels.notKnown : numbers.bareAcceleration(quantity.value),
    quantity === null ? "" : numbers.bareAccelerationInterval(...quantity.interval95),
    numbers.bareAcceleration(limit.value),
    quantity && motion.verdict !== "withheld" ? verdictText(against(quantity, limit), view) : "",
  ];
  return [
    [`${labels.acceleration}, rad/s²`, "", labels.interval95, labels.limit, labels.verdict].map((text) => view.paint("aside", text)),
    row(labels.drivenAcceleration, top.drivenAccelerationRadS2, limits.drivenAccelerationOver),
    ...top.drive.map(({ section, accelerationRadS2 }) =>
      row(`${nameOf(section)}, ${labels.drive}`, accelerationRadS2, limits.inertiaDrive),
    ),
    ...top.coast.map(({ section, accelerationRadS2 }) =>
      row(`${nameOf(section)}, ${labels.coast}`, accelerationRadS2, limits.inertiaCoast),
    ),
  ];
}

const against = ({ interval95: [low, high] }: NonNullable<Quantity>, limit: Limit<number>) =>
  verdictOf({ low, high }, { maximum: limit.value });
