import type { NameOf, OrderWords } from "@halfturn/words";
import styles from "./record-page.module.css";

type Coincidence = Parameters<OrderWords["coincidence"]>[0];

/** Orders that cannot be told apart, and what would part them. */
export const CoincidenceList = ({
  coincidences,
  orders,
  nameOf,
}: {
  readonly coincidences: readonly Coincidence[];
  readonly orders: OrderWords;
  readonly nameOf: NameOf;
}) => (
  <ul className={styles.plainList}>
    {coincidences.map((found) => (
      <li key={`${found.first.part} ${found.first.order} ${found.second.part} ${found.second.order}`}>
        {orders.coincidence(found, nameOf)}
      </li>
    ))}
  </ul>
);
