import { comparisonView } from "@halfturn/figures";
import { probabilityBound } from "@halfturn/words";
import type { Block, Cell, Column, Facts, Section, Table } from "./blocks.js";
import { comparedQuantities, quantityCell } from "./compared-quantities.js";
import { stepBlocks } from "./correction-steps.js";
import type { CorrectedDriveline, CorrectionSubject, Foretold } from "./correction-subject.js";
import { dayText } from "./day-text.js";
import { figureOf, reportFigureOptions } from "./figures.js";
import { foretoldPicture, gaugedPicture } from "./predicted-picture.js";

/** Beside the names and what was before, a page has room for this many states; more go into a table of their own. */
const STATES_ACROSS = 3;

function chanceText({ record, words, numbers, catalogue }: CorrectionSubject): string {
  const share = (chance: number): string => {
    const bound = probabilityBound(chance);
    return bound === null ? numbers.share(chance) : bound === "above" ? words.correct.nearlyAll : words.correct.hardlyAny;
  };
  const { probabilityWithin: within, probabilityOfLimits: ofLimits } = record;
  if (within === undefined) return words.correct.chanceNotAsked;
  if (within !== null) return words.correct.chanceOf(share(within));
  return ofLimits === undefined ? catalogue.labels.notKnown : catalogue.correction.chanceUnknown(share(ofLimits));
}

function basisTexts(subject: CorrectionSubject): readonly string[] {
  const { record, report, words, catalogue, drivelines } = subject;
  return record.basis.map(({ driveline, gauging }) => {
    const gauged = report.case.gauging?.[gauging];
    const name = drivelines.find((one) => one.driveline.id === driveline)?.name;
    if (!gauged || gauged.driveline !== driveline || name === undefined) return words.correct.basisGone;
    const day = gauged.takenAt ? dayText(gauged.takenAt, catalogue.language) : null;
    return words.correct.basisOf(name, catalogue.labels.stages[gauged.stage], day);
  });
}

function chosenFacts(subject: CorrectionSubject): Facts {
  const { record, report, words, catalogue, text } = subject;
  const at = words.correct;
  const day = (moment: string): string => dayText(moment, catalogue.language);
  const changes = record.changes.map((change) =>
    text.change(change, report.case.adjusters?.find(({ id }) => id === change.adjuster)?.kind),
  );
  return {
    kind: "facts",
    items: [
      { label: at.change, value: changes.join("; ") || catalogue.correction.nothing },
      { label: at.chosen, value: day(record.chosenAt) },
      { label: at.made, value: record.madeAt ? day(record.madeAt) : record.state === "made" ? at.madeNoDate : at.notMade },
      { label: at.basis, value: basisTexts(subject).join("; ") },
      { label: at.chance, value: chanceText(subject) },
    ],
  };
}

const across = (states: readonly Foretold[]): readonly (readonly Foretold[])[] =>
  Array.from({ length: Math.ceil(states.length / STATES_ACROSS) }, (_, k) => states.slice(k * STATES_ACROSS, (k + 1) * STATES_ACROSS));

/** Before beside each state, one row for each quantity. */
function foretoldTables(subject: CorrectionSubject, on: CorrectedDriveline): readonly Table[] {
  const { words, catalogue, numbers } = subject;
  const quantities = comparedQuantities(subject, on);
  const column = (label: string): Column => ({ label, align: "start", weight: 2 });
  const speed = on.foretold.find(({ of }) => of.highestSpeed)?.of.highestSpeed?.shaftRpm;
  return across(on.foretold).map((states) => ({
    kind: "table",
    caption: words.correct.foretoldOf(on.name),
    columns: [
      { label: words.tables.quantity, align: "start", weight: 1.8 },
      column(words.correct.before),
      ...states.map((one) => column(foretoldIn(subject, one))),
    ],
    rows: quantities.map((quantity): readonly Cell[] => [
      { text: quantity.label },
      beforeCell(subject, on, quantity),
      ...states.map(({ of }) => quantityCell(subject, quantity, quantity.ofForetold(of))),
    ]),
    notes: [
      ...(speed === undefined ? [] : [words.correct.atSpeed(numbers.speed(speed))]),
      ...(on.driveline.sections.length > 0 ? [words.correct.slipSign] : []),
      catalogue.explanations.intervalsMean,
    ],
  }));
}

/** "Foretold: as gauged": the name of a state alone would read as a measurement. */
const foretoldIn = ({ catalogue }: CorrectionSubject, { stateName }: { readonly stateName: string }): string =>
  `${catalogue.correction.foretold}: ${stateName}`;

/** The slip is measured by nobody's gauge: where it stood when gauged is where it is counted from. */
function beforeCell(subject: CorrectionSubject, on: CorrectedDriveline, quantity: ReturnType<typeof comparedQuantities>[number]): Cell {
  const estimate = on.before && quantity.ofResult(on.before.analysis);
  return estimate ? quantityCell(subject, quantity, estimate, on.before?.analysis.withheld) : { text: "–" };
}

function beforeAfterFigure(subject: CorrectionSubject, on: CorrectedDriveline): readonly Block[] {
  const shown = on.foretold.find(({ asGauged }) => asGauged) ?? on.foretold[0];
  const after = shown && foretoldPicture(subject, on, shown);
  if (!on.before || !shown || !after) return [];
  const { words, report } = subject;
  const svg = comparisonView(
    [
      { name: words.correct.before, picture: gaugedPicture(subject, on, on.before) },
      { name: foretoldIn(subject, shown), picture: after },
    ],
    reportFigureOptions(report),
  );
  return [figureOf(words.correct.figureOf(on.name), svg)];
}

function correctionSection(subject: CorrectionSubject): Section {
  const { words, record, catalogue } = subject;
  return {
    title: words.correct.chosenOn(dayText(record.chosenAt, catalogue.language)),
    level: 2,
    blocks: [
      chosenFacts(subject),
      ...subject.drivelines.flatMap((on) => [...foretoldTables(subject, on), ...beforeAfterFigure(subject, on)]),
      ...stepBlocks(subject),
    ],
  };
}

/** What was chosen, what it will do, and the work in its order; one line where the case could be corrected and nothing was chosen. */
export function correctSections(
  subjects: readonly CorrectionSubject[],
  adjusters: number,
  title: string,
  noneChosen: string,
): readonly Section[] {
  if (subjects.length > 0) return [{ title, level: 1, blocks: [] }, ...subjects.map(correctionSection)];
  return adjusters === 0 ? [] : [{ title, level: 1, blocks: [{ kind: "paragraph", text: noneChosen }] }];
}
