import type { NearOrder, PartJson } from "@halfturn/casefile";
import { catalogueOf, type NameOf } from "@halfturn/words";
import type { Settings } from "../../../device/settings.js";
import { useWords } from "../../../words/use-words.js";
import { partName } from "../part-names.js";
import styles from "../record-page.module.css";
import { recordWords } from "../words/record-catalogue.js";

export interface TurningPartsProps {
  readonly parts: readonly PartJson[];
  /** Orders that are marked: they lie at the frequency asked about. */
  readonly near: readonly NearOrder[];
  readonly nameOf: NameOf;
  readonly settings: Settings;
}

const PER_MINUTE = 60;

/** Every part that turns, and the orders it can shake at, with where each lies. */
export function TurningParts({ parts, near, nameOf, settings }: TurningPartsProps) {
  const words = useWords(recordWords);
  const catalogue = catalogueOf(settings.language);
  const { orders, numbers } = catalogue;
  const isNear = (part: string, order: number): boolean => near.some((one) => one.part === part && one.order === order);
  return (
    <ul className={styles.parts}>
      {parts.map(({ part, turnsPerSecond, orders: own }) => (
        <li key={part} className={styles.part}>
          <h4>{partName(catalogue, nameOf, part)}</h4>
          {turnsPerSecond === null ? null : (
            <p className={styles.quiet}>
              {words.turning.rate(numbers.plain(turnsPerSecond.value, 1), numbers.speed(turnsPerSecond.value * PER_MINUTE))}
            </p>
          )}
          <ul className={styles.orders}>
            {own.map(({ order, frequencyHz, cause }) => (
              <li key={order} className={isNear(part, order) ? styles.marked : ""}>
                <span>
                  {isNear(part, order) ? <span aria-hidden="true">● </span> : null}
                  {words.turning.order(numbers.plain(order, Number.isInteger(order) ? 0 : 1), orders.causes[cause])}
                </span>
                <strong>{frequencyHz === null ? "" : `${numbers.plain(frequencyHz.value, 1)}\u00a0Hz`}</strong>
              </li>
            ))}
          </ul>
        </li>
      ))}
    </ul>
  );
}
