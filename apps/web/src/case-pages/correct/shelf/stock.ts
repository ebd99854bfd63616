import type { CaseAdjuster } from "@halfturn/casefile";

/** Stock as the form shows it, whatever the unit of the file: a list of sizes, or a range in steps. */
export type FormStock =
  | { readonly kind: "sizes"; readonly sizes: readonly number[] }
  | { readonly kind: "range"; readonly minimum: number; readonly maximum: number; readonly step: number };

type Stocked = Extract<CaseAdjuster, { readonly stock: unknown }>;
type FileStock = Stocked["stock"];

export const isStocked = (adjuster: CaseAdjuster): adjuster is Stocked => "stock" in adjuster;

/** Wedges are stocked by degrees, all else by millimetres. */
export const stockMeasure = ({ kind }: CaseAdjuster): "angle" | "length" => (kind === "axle-wedge" ? "angle" : "length");

export function formStock(stock: FileStock): FormStock {
  if ("sizesMm" in stock) return { kind: "sizes", sizes: stock.sizesMm };
  if ("sizesDeg" in stock) return { kind: "sizes", sizes: stock.sizesDeg };
  return "minMm" in stock
    ? { kind: "range", minimum: stock.minMm, maximum: stock.maxMm, step: stock.stepMm }
    : { kind: "range", minimum: stock.minDeg, maximum: stock.maxDeg, step: stock.stepDeg };
}

/** The adjuster with another stock, in the unit of its kind. */
export function withStock<Of extends CaseAdjuster>(adjuster: Of, stock: FormStock): Of {
  const unit = stockMeasure(adjuster) === "angle" ? "Deg" : "Mm";
  const written =
    stock.kind === "sizes"
      ? { [`sizes${unit}`]: [...new Set(stock.sizes)].sort((a, b) => a - b) }
      : { [`min${unit}`]: stock.minimum, [`max${unit}`]: stock.maximum, [`step${unit}`]: stock.step };
  return { ...adjuster, stock: written };
}

/** At most so many sizes are carried over from a range. */
const MOST_SIZES = 40;

/** The same stock written the other way: a range as its sizes, sizes as the range they span by their smallest gap. */
export function otherWay(stock: FormStock): FormStock {
  if (stock.kind === "range") {
    const count = Math.min(MOST_SIZES, Math.floor((stock.maximum - stock.minimum) / stock.step + 1e-9) + 1);
    const sizes = Array.from({ length: Math.max(1, count) }, (_, k) => Number((stock.minimum + k * stock.step).toPrecision(12)));
    return { kind: "sizes", sizes: sizes.filter((size) => size !== 0 || sizes.length === 1) };
  }
  const rising = [...new Set([...stock.sizes, 0])].sort((a, b) => a - b);
  const gaps = rising.slice(1).map((size, k) => size - (rising[k] ?? 0));
  return { kind: "range", minimum: rising[0] ?? 0, maximum: rising.at(-1) ?? 0, step: gaps.length > 0 ? Math.min(...gaps) : 1 };
}
