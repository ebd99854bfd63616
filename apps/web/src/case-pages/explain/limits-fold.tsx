import type { Limit } from "@halfturn/engine/limits";
import { limitSourceText } from "@halfturn/words";
import { Fold } from "../../controls/fold.js";
import { useWords } from "../../words/use-words.js";
import { angleOf } from "../shared/estimate-text.js";
import type { Subject } from "../shared/subject.js";
import styles from "./explain-page.module.css";
import { explainWords } from "./explain-words.js";

/** Every limit that a verdict here rests on, and where it comes from. */
export const LimitsFold = ({ subject: { input, catalogue } }: { readonly subject: Subject }) => {
  const words = useWords(explainWords);
  const { numbers, labels } = catalogue;
  const { limits, driveline } = input;
  const names = words.limitNames;
  const kinds = [...new Set(driveline.joints.map(({ kind }) => kind))];
  const angle = (name: string, limit: Limit<number>) => ({ name, value: angleOf(limit.value, numbers), source: limit.source });
  const acceleration = (name: string, limit: Limit<number>) => ({ name, value: numbers.acceleration(limit.value), source: limit.source });
  const rows = [
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
  return (
    <Fold title={words.details}>
      <ul className={styles.rows}>
        {rows.map(({ name, value, source }) => (
          <li key={name} className={styles.limit}>
            <span>{name}</span>
            <strong>{value}</strong>
            <span className={styles.quiet}>{limitSourceText(catalogue, source)}</span>
          </li>
        ))}
      </ul>
    </Fold>
  );
};
