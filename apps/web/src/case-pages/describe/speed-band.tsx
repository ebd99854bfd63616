import { TogetherFields } from "../../measure/together-fields.js";
import { fieldNames } from "../../words/field-names.js";
import { useWords } from "../../words/use-words.js";
import styles from "./part.module.css";
import { describeWords } from "./words/describe-words.js";

const ROAD = { minimum: 0, maximum: 400 };

export type Band = readonly [from: number, to: number];

/** The slower end first. */
export const inOrder = ([from, to]: Band): Band => (from <= to ? [from, to] : [to, from]);

export interface SpeedBandProps {
  readonly band: Band | null;
  readonly onChange: (band: Band | null) => void;
}

/** The road speeds between which it shakes. While one end is being typed it may be the wrong way round; once both are left it is not. */
export function SpeedBand({ band, onChange }: SpeedBandProps) {
  const words = useWords(describeWords);
  const names = useWords(fieldNames);
  return (
    <fieldset
      className={styles.group}
      aria-label={names.speedKmh}
      onBlur={({ currentTarget, relatedTarget }) => {
        if (band && !currentTarget.contains(relatedTarget) && band[0] > band[1]) onChange(inOrder(band));
      }}
    >
      <TogetherFields
        part="speedKmh"
        fields={[
          { key: "from", label: `${names.speedKmh}: ${words.from}`, measure: "road-speed", bounds: ROAD },
          { key: "to", label: `${names.speedKmh}: ${words.to}`, measure: "road-speed", bounds: ROAD },
        ]}
        value={band && { from: band[0], to: band[1] }}
        onChange={(ends) => onChange(ends && [ends.from, ends.to])}
      />
      <p className={styles.help}>{words.bandHelp}</p>
    </fieldset>
  );
}
