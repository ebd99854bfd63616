import type { Limit, LimitSet } from "@halfturn/engine/limits";
import { type Radians, radiansToDegrees } from "@halfturn/engine/units";
import type { Catalogue } from "./catalogue.js";
import { limitSourceText } from "./limit-source-text.js";

type Kind = keyof LimitSet["jointAngle"];

export interface LimitRow {
  readonly name: string;
  readonly value: string;
  readonly source: string;
}

/** Every limit that a verdict on joints of these kinds rests on, in one order wherever it is shown, and where it comes from. */
export function limitRows(catalogue: Catalogue, limits: LimitSet, kinds: readonly Kind[]): readonly LimitRow[] {
  const { numbers, labels } = catalogue;
  const names = labels.limitNames;
  const row = (name: string, value: string, { source }: Limit<number>): LimitRow => ({
    name,
    value,
    source: limitSourceText(catalogue, source),
  });
  const angle = (name: string, limit: Limit<Radians>): LimitRow => row(name, numbers.angle(radiansToDegrees(limit.value)), limit);
  const acceleration = (name: string, limit: Limit<number>): LimitRow => row(name, numbers.acceleration(limit.value), limit);
  return [
    acceleration(names.jointAcceleration, limits.jointAcceleration),
    ...kinds.flatMap((kind) => [
      angle(names.jointAngle(labels.jointKinds[kind]), limits.jointAngle[kind]),
      angle(names.minimumAngle(labels.jointKinds[kind]), limits.minimumAngle[kind]),
    ]),
    angle(names.equivalentAngle, limits.equivalentAngle),
    acceleration(names.drivenAccelerationWarn, limits.drivenAccelerationWarn),
    acceleration(names.drivenAccelerationOver, limits.drivenAccelerationOver),
    acceleration(names.inertiaDrive, limits.inertiaDrive),
    acceleration(names.inertiaCoast, limits.inertiaCoast),
    angle(names.benchMet, limits.benchMet),
    angle(names.benchAccepted, limits.benchAccepted),
  ];
}
