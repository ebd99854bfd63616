import { Button } from "../../../controls/button.js";
import { Choice } from "../../../controls/choice.js";
import { useKeptDraft } from "../../../device/kept-draft.js";
import { MeasureField } from "../../../measure/measure-field.js";
import { shownAs } from "../../../measure/measures.js";
import { measureText } from "../../../measure/read-measure.js";
import { useSettings } from "../../../settings/settings-context.js";
import { useLanguage, useWords } from "../../../words/use-words.js";
import styles from "./shelf-card.module.css";
import { shelfWords } from "./shelf-words.js";
import { type FormStock, otherWay } from "./stock.js";

export interface StockFieldProps {
  readonly stock: FormStock;
  readonly measure: "angle" | "length";
  readonly plus: string;
  readonly onChange: (stock: FormStock) => void;
}

/** What sizes there are: one by one, or from and to in steps. */
export const StockField = ({ stock, measure, plus, onChange }: StockFieldProps) => {
  const words = useWords(shelfWords);
  return (
    <div className={styles.stock}>
      <Choice
        label={`${words.stock} (${plus})`}
        value={stock.kind}
        onChange={(kind) => {
          if (kind !== stock.kind) onChange(otherWay(stock));
        }}
        options={[
          { value: "sizes", label: words.asSizes },
          { value: "range", label: words.asRange },
        ]}
      />
      {stock.kind === "sizes" ? (
        <Sizes sizes={stock.sizes} measure={measure} onChange={(sizes) => onChange({ kind: "sizes", sizes })} />
      ) : (
        <div className={styles.three}>
          {(["minimum", "maximum", "step"] as const).map((end) => (
            <MeasureField
              key={end}
              part={end}
              label={{ minimum: words.from, maximum: words.to, step: words.step }[end]}
              measure={measure}
              value={stock[end]}
              bounds={end === "step" ? { above: 0 } : end === "minimum" ? { maximum: stock.maximum } : { minimum: stock.minimum }}
              onChange={(value) => {
                if (value !== null) onChange({ ...stock, [end]: value });
              }}
            />
          ))}
        </div>
      )}
    </div>
  );
};

interface SizesProps {
  readonly sizes: readonly number[];
  readonly measure: "angle" | "length";
  readonly onChange: (sizes: readonly number[]) => void;
}

const isNumber = (value: unknown): value is number => typeof value === "number";

const Sizes = ({ sizes, measure, onChange }: SizesProps) => {
  const words = useWords(shelfWords);
  const { settings } = useSettings();
  const { chip } = shownAs(measure, settings.units);
  const decimalSign = useLanguage() === "es" ? "," : ".";
  const [next, setNext] = useKeptDraft("size", isNumber);
  const textOf = (size: number): string =>
    `${size > 0 ? "+" : ""}${measureText(size, measure, settings.units, decimalSign)}${measure === "angle" ? "" : " "}${chip}`;
  const add = () => {
    if (next !== null && next !== 0) onChange([...sizes, next]);
    setNext(null);
  };
  return (
    <>
      <ul className={styles.sizes} aria-label={words.sizes}>
        {[...sizes]
          .sort((a, b) => a - b)
          .map((size) => (
            <li key={size}>
              <Button
                label={words.removeSize(textOf(size))}
                isDisabled={sizes.length === 1}
                onPress={() => onChange(sizes.filter((one) => one !== size))}
              >
                {textOf(size)} <span aria-hidden="true">×</span>
              </Button>
            </li>
          ))}
      </ul>
      <div className={styles.addSize}>
        <MeasureField part="size.text" label={words.addSize} measure={measure} value={next} onChange={setNext} />
        <Button isDisabled={next === null || next === 0 || sizes.includes(next)} onPress={add}>
          {words.add1}
        </Button>
      </div>
    </>
  );
};
