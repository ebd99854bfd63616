import type { Sensitivity } from "@halfturn/engine/analysis";
import type { Block } from "./blocks.js";
import type { Subject } from "./subject.js";

/** More rows than this say nothing that a reader can act on. */
const LARGEST = 5;
/** Below this share, repeating one reading would not move the interval by an amount anybody could see. */
const STANDS_OUT = 0.15;

/** A place of the gauging by its name, anything else by what it is. */
function contributionName({ words, nameOf, catalogue }: Subject, { of, path }: Sensitivity): string {
  if (of === "zero") return words.sureness.zero;
  const place = path.startsWith("gauging[") ? nameOf(path) : path;
  if (place !== path) return place.charAt(0).toLocaleUpperCase(catalogue.language) + place.slice(1);
  return of.startsWith("heading:") ? words.sureness.heading(nameOf(of.slice("heading:".length))) : nameOf(of);
}

/** One instruction: what to read again first. */
export function repeatFirst({ analysis, catalogue, nameOf }: Subject): string {
  const first = analysis.sensitivity[0];
  return first && first.share >= STANDS_OUT ? catalogue.phrases.repeat(first, nameOf) : catalogue.explanations.nothingToRepeat;
}

/** Which reading to repeat, and the largest contributions to the uncertainty. */
export function surenessBlocks(subject: Subject): readonly Block[] {
  const { analysis, catalogue, words, numbers } = subject;
  const { labels } = catalogue;
  if (analysis.sensitivity.length === 0) return [{ kind: "paragraph", text: words.sureness.noBudget }];
  const largest = analysis.sensitivity.slice(0, LARGEST);
  const rest = analysis.sensitivity.slice(LARGEST).reduce((sum, { share }) => sum + share, 0);
  const row = (one: Sensitivity) => [{ text: contributionName(subject, one) }, { text: numbers.share(one.share) }];
  return [
    { kind: "paragraph", text: `${labels.repeatFirst}: ${repeatFirst(subject)}` },
    {
      kind: "table",
      caption: words.tables.budget,
      columns: [
        { label: words.tables.from, align: "start", weight: 3 },
        { label: labels.shareOfUncertainty, align: "end", weight: 1.6 },
      ],
      rows: [...largest.map(row), ...(rest > 0 ? [[{ text: words.tables.restOfBudget }, { text: numbers.share(rest) }]] : [])],
      notes: [],
    },
  ];
}
