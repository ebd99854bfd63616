import { expect, test } from "vitest";
import { EXAMPLE_NAMES, exampleCase, sampleReport } from "../sample-report.test-support.js";
import type { Figure, ReportContent } from "./blocks.js";
import { reportContent } from "./report-content.js";

const figuresOf = ({ sections }: ReportContent): readonly Figure[] =>
  sections.flatMap(({ blocks }) => blocks.filter((block) => block.kind === "figure"));
const widthOf = ({ svg }: Figure): string | undefined => /^<svg[^>]* width="(\d+)"/.exec(svg)?.[1];
const otherThanFigures = (content: ReportContent): unknown =>
  content.sections.map(({ title, blocks }) => [title, blocks.filter(({ kind }) => kind !== "figure")]);

test.each(EXAMPLE_NAMES)("the figures of %s are as wide as their place, and nothing else of the report hangs on that", (name) => {
  const input = sampleReport(exampleCase(name));
  const [paper, narrow] = [reportContent(input), reportContent({ ...input, figureWidth: 320 })];
  expect(figuresOf(narrow)).not.toEqual([]);
  expect(figuresOf(narrow).map(widthOf)).toEqual(figuresOf(paper).map(() => "320"));
  expect(figuresOf(paper).map(widthOf)).toEqual(figuresOf(paper).map(() => "720"));
  expect(figuresOf(narrow).map(({ caption }) => caption)).toEqual(figuresOf(paper).map(({ caption }) => caption));
  expect(otherThanFigures(narrow)).toEqual(otherThanFigures(paper));
});
