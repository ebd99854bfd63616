import { type NearOrder, type Turning, turningAt } from "@halfturn/casefile";
import { capital, catalogueOf, type NameOf } from "@halfturn/words";
import { useWords } from "../../../words/use-words.js";
import type { CasePageProps } from "../../case-page.js";
import styles from "../record-page.module.css";
import { speedStep } from "../usual-speeds.js";
import { recordWords } from "../words/record-catalogue.js";

export interface NearOrdersProps extends Pick<CasePageProps, "document" | "settings"> {
  readonly turning: Turning;
  readonly near: readonly NearOrder[];
  /** Hz. */
  readonly frequency: number;
  readonly nameOf: NameOf;
}

/** What a felt or measured frequency can be, and where it goes at another speed if it is: the quickest test on the road. */
export function NearOrders({ document, settings, turning: { json, basis }, near, frequency, nameOf }: NearOrdersProps) {
  const words = useWords(recordWords).turning;
  const { orders, numbers } = catalogueOf(settings.language, settings.units);
  const hertz = (value: number): string => `${numbers.plain(value, 1)}\u00a0Hz`;
  const faster = json.speedKmh + speedStep(settings.units);
  const then = turningAt(document, { speed: faster, gear: basis.gear ?? undefined });
  const frequencyThen = (part: string, order: number): number | null => {
    const found = then.ok ? then.json.parts.find((one) => one.part === part) : undefined;
    return found?.orders.find((one) => one.order === order)?.frequencyHz?.value ?? null;
  };
  if (near.length === 0) {
    return (
      <div className={styles.stack} role="status">
        <p className={styles.answer}>{words.nothingThere(hertz(frequency), numbers.roadSpeed(json.speedKmh))}</p>
        <p>{words.rings}</p>
      </div>
    );
  }
  return (
    <div className={styles.stack} role="status">
      <p className={styles.answer}>{words.there(hertz(frequency), numbers.roadSpeed(json.speedKmh))}</p>
      <ul className={styles.plainList}>
        {near.map(({ part, order, cause, frequency: at }) => {
          const later = frequencyThen(part, order);
          return (
            <li key={`${part} ${order}`}>
              <strong>{capital(orders.orderOf(part, order, nameOf))}</strong>: {hertz(at)}, {orders.causes[cause]}.
              {later === null ? null : ` ${words.moves(numbers.roadSpeed(faster), hertz(later))}`}
            </li>
          );
        })}
      </ul>
      <p className={styles.quiet}>{words.stays}</p>
    </div>
  );
}
