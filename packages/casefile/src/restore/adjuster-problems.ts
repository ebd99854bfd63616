import { type Path, type PlacedProblem, placed, suggestionFor } from "../problems/index.js";
import type { CaseAdjuster, CaseDriveline } from "../schema/case.js";
import { contradicts } from "./relations.js";

type Stock = Extract<CaseAdjuster, { readonly stock: unknown }>["stock"];

/** The joint or section an adjuster acts on has to exist on its driveline, and a range of stock has to run upward. */
export function adjusterProblems(adjuster: CaseAdjuster, drivelines: readonly CaseDriveline[], place: Path): readonly PlacedProblem[] {
  const stock = "stock" in adjuster ? stockProblems(adjuster.stock, [...place, "stock"]) : [];
  const driveline = "driveline" in adjuster ? drivelines.find(({ id }) => id === adjuster.driveline) : undefined;
  if (!driveline) return stock;
  if ("joint" in adjuster) {
    return [...stock, ...unknownPart("joint", adjuster.joint, driveline.joints, place)];
  }
  return "section" in adjuster ? unknownPart("section", adjuster.section, driveline.sections, place) : stock;
}

function unknownPart(
  of: "joint" | "section",
  got: string,
  parts: readonly { readonly id: string }[],
  place: Path,
): readonly PlacedProblem[] {
  const allowed = parts.map(({ id }) => id);
  if (allowed.includes(got)) return [];
  return [placed([...place, of], "unknown-reference", { of, got, allowed, ...suggestionFor(got, allowed) })];
}

function stockProblems(stock: Stock, place: Path): readonly PlacedProblem[] {
  if ("minDeg" in stock) return contradicts([...place, "maxDeg"], [stock.maxDeg, "at-least", stock.minDeg], "minDeg");
  return "minMm" in stock ? contradicts([...place, "maxMm"], [stock.maxMm, "at-least", stock.minMm], "minMm") : [];
}
