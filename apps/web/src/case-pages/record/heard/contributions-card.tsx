import type { AttributionJson, ContributionJson } from "@halfturn/casefile";
import { type Catalogue, capital, catalogueOf, type NameOf, probabilityText } from "@halfturn/words";
import { Card } from "../../../controls/card.js";
import { Fold } from "../../../controls/fold.js";
import { Meter } from "../../../controls/meter.js";
import type { Settings } from "../../../device/settings.js";
import { useWords } from "../../../words/use-words.js";
import type { Heard } from "../../../worker/listening/listening-types.js";
import { CoincidenceList } from "../coincidence-list.js";
import styles from "../record-page.module.css";
import { recordWords } from "../words/record-catalogue.js";

/** An order that explains less, and is less probable, is only counted. */
const LEAST_SHARE = 0.005;
const MOST = 8;

const weightOf = ({ share, probability }: ContributionJson): number => Math.max(share ?? 0, probability ?? 0);

export interface ContributionsCardProps {
  readonly heard: Heard;
  readonly nameOf: NameOf;
  readonly settings: Settings;
}

/** What the vibration is made of: each order with its size and its share, what stays unexplained, and what could not be seen. */
export function ContributionsCard({ heard: { json }, nameOf, settings }: ContributionsCardProps) {
  const words = useWords(recordWords).heard;
  const catalogue = catalogueOf(settings.language, settings.units);
  const { orders, numbers, terminal, vibration } = catalogue;
  const { listening } = terminal;
  const seen = json.contributions.filter(({ observable }) => observable).toSorted((a, b) => weightOf(b) - weightOf(a));
  const shown = seen.filter((one, k) => k < MOST && (k === 0 || weightOf(one) >= LEAST_SHARE));
  const smaller = seen.length - shown.length;
  return (
    <Card title={listening.contributions}>
      <ul className={styles.contributions}>
        {shown.map((one) => (
          <Contribution key={`${one.part} ${one.order}`} one={one} nameOf={nameOf} catalogue={catalogue} />
        ))}
        <li className={styles.contribution}>
          <span>{vibration.unexplained}</span>
          <strong>{numbers.share(json.unexplainedShare)}</strong>
          <Meter share={json.unexplainedShare} label={vibration.unexplained} />
        </li>
      </ul>
      <p className={styles.quiet}>
        {shown.some(({ amplitudeMS2 }) => amplitudeMS2 !== null) ? `${listening.amplitudesIn(json.channel)} ` : ""}
        {listening.probabilityMeans}
        {smaller > 0 ? ` ${capital(words.smaller(numbers.plain(smaller, 0)))}.` : ""}
      </p>
      <Unseen json={json} nameOf={nameOf} catalogue={catalogue} />
      {json.coincidences.length === 0 ? null : (
        <Fold title={`${orders.coincidences}: ${numbers.plain(json.coincidences.length, 0)}`}>
          <CoincidenceList coincidences={json.coincidences} orders={orders} nameOf={nameOf} />
        </Fold>
      )}
    </Card>
  );
}

interface Named {
  readonly nameOf: NameOf;
  readonly catalogue: Catalogue;
}

function Contribution({ one, nameOf, catalogue: { orders, numbers, terminal } }: Named & { readonly one: ContributionJson }) {
  const words = useWords(recordWords).heard;
  const { part, order, amplitudeMS2, share, probability, frequencyHz, together } = one;
  const name = capital(orders.orderOf(part, order, nameOf));
  const others = together
    .filter((other) => other.part !== part || other.order !== order)
    .map((other) => orders.orderOf(other.part, other.order, nameOf));
  const digits = amplitudeMS2 !== null && amplitudeMS2.value < 0.1 ? 3 : 2;
  const facts = [
    words.between(numbers.plain(frequencyHz[0], 1), numbers.plain(frequencyHz[1], 1)),
    ...(amplitudeMS2 === null
      ? []
      : [
          words.amplitude(
            numbers.plain(amplitudeMS2.value, digits),
            numbers.plain((amplitudeMS2.interval95[1] - amplitudeMS2.interval95[0]) / 2, digits),
          ),
        ]),
    ...(probability === null ? [] : [words.probable(probabilityText(probability, numbers))]),
    ...(others.length === 0 ? [] : [terminal.listening.with(numbers.all(others))]),
  ];
  return (
    <li className={styles.contribution}>
      <span>{name}</span>
      <strong>{share === null ? "" : numbers.share(share)}</strong>
      {share === null ? null : <Meter share={share} label={`${name}: ${words.explains(numbers.share(share))}`} />}
      <span className={styles.facts}>{facts.join("; ")}</span>
    </li>
  );
}

/** Orders above what the recording can show: their silence must not be read as innocence. */
function Unseen({ json, nameOf, catalogue: { orders, numbers, terminal } }: Named & { readonly json: AttributionJson }) {
  const { listening } = terminal;
  const unseen = json.contributions.filter(({ observable }) => !observable);
  if (unseen.length === 0) return null;
  return (
    <Fold title={`${listening.unseen}: ${numbers.plain(unseen.length, 0)}`} open>
      <ul className={styles.plainList}>
        {unseen.map(({ part, order, frequencyHz: [low, high], foldsToHz }) => (
          <li key={`${part} ${order}`}>
            {listening.unseenOrder(capital(orders.orderOf(part, order, nameOf)), numbers.plain(low, 0), numbers.plain(high, 0))}
            {foldsToHz === null ? "" : `; ${listening.foldsTo(numbers.plain(foldsToHz, 0))}`}
          </li>
        ))}
      </ul>
      <p className={styles.quiet}>{listening.unseenWhy(numbers.plain(json.bandHz, 0))}</p>
    </Fold>
  );
}
