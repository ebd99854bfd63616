import { memo, useId } from "react";
import { Button } from "../../../controls/button.js";
import { useWords } from "../../../words/use-words.js";
import type { CorrectionView } from "../correction-view.js";
import { placeOf, type Stops } from "./stops.js";
import styles from "./try-card.module.css";
import { tryWords } from "./try-words.js";

export interface AmountSliderProps {
  readonly stops: Stops;
  readonly amount: number;
  readonly view: CorrectionView;
  readonly onAmount: (adjusterId: string, amount: number) => void;
}

/** One adjuster: a slider that stands at the sizes in stock only, with a large key on either side for a gloved thumb. */
export const AmountSlider = memo(({ stops, amount, view, onAmount }: AmountSliderProps) => {
  const words = useWords(tryWords);
  const id = useId();
  const { adjuster, amounts } = stops;
  const place = placeOf(stops, amount);
  const name = view.names.adjuster(adjuster.id);
  const said = amount === 0 ? words.asItIs : (view.changes([{ adjusterId: adjuster.id, amount }])[0] ?? "").slice(name.length + 2);
  const go = (to: number) => onAmount(adjuster.id, amounts[to] ?? 0);
  return (
    <div className={styles.adjuster}>
      <label htmlFor={id} className={styles.name}>
        {name}
      </label>
      <output className={styles.amount} htmlFor={id} data-set={amount === 0 ? undefined : true}>
        {said}
      </output>
      <div className={styles.slider}>
        <Button label={words.less(name)} isDisabled={place === 0} onPress={() => go(place - 1)}>
          −
        </Button>
        <input
          id={id}
          className={styles.range}
          type="range"
          min={0}
          max={amounts.length - 1}
          step={1}
          value={place}
          aria-valuetext={said}
          onChange={(event) => go(Number(event.target.value))}
        />
        <Button label={words.more(name)} isDisabled={place === amounts.length - 1} onPress={() => go(place + 1)}>
          +
        </Button>
      </div>
    </div>
  );
});
