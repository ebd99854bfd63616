import type { CorrectionBasis, MissingJson } from "@halfturn/casefile";
import type { Reason } from "@halfturn/engine/correction";
import type { Finding } from "@halfturn/engine/findings";
import { drivelineName, shortAngle } from "@halfturn/words";
import type { CorrectionView } from "./correction-view.js";
import { findingLines } from "./findings.js";
import { wrap } from "./wrap.js";

/** What a prediction or plan rests on, where that is not plain: lengths that were learned, and drivelines that are left out. */
export function basisLines(
  { chosen, taught, document, input }: CorrectionBasis,
  leftOut: readonly Reason[],
  view: CorrectionView,
): readonly string[] {
  const { correction } = view.words;
  const learned =
    taught.kind === "learned"
      ? [correction.learned(taught.from.length, taught.geometry.readings)]
      : taught.kind === "misfit"
        ? [correction.notLearned]
        : [];
  const missing = chosen.flatMap(({ driveline, gauging }) =>
    gauging === null ? [correction.neverGauged(drivelineName(document, driveline, view.words))] : [],
  );
  const stops = input.drivelines.flatMap(({ refused, poses }) =>
    refused ? poses.findings.filter(({ severity }) => severity === "stop") : [],
  );
  const codes = [...new Set(stops.map(({ code }) => code))];
  const hint = codes.length === 0 ? [] : wrap(view.words.terminal.analysed.withheldHint(codes.join(" --accept ")), view.width, "  ");
  const out = [...new Set(leftOut.map((reason) => view.text.reason(reason))), ...missing];
  const lines = [
    ...learned.flatMap((line) => wrap(line, view.width, "")),
    ...(taught.kind === "misfit"
      ? listed(
          taught.lookAt.map((code) => correction.looks[code]),
          view,
        )
      : []),
    ...(out.length === 0 ? [] : [view.paint("strong", correction.leftOut), ...listed(out, view), ...hint]),
  ];
  return lines.length === 0 ? [] : [...lines, ""];
}

/** What every number rests on in spite of it. */
export const groundLines = (findings: readonly Finding[], view: CorrectionView): readonly string[] =>
  findings.length === 0 ? [] : [...findingLines(findings, view.document, view), ""];

/** The last digit shown of an angle: "up to 0°" would say that a measurement is for nothing. */
const LEAST_SHOWN_DEG = 0.01;

/** What to measure next, and what each measurement would bring. */
export function missingLines(missing: readonly MissingJson[], view: CorrectionView): readonly string[] {
  const { correction, numbers } = view.words;
  const lines = missing.map(({ of, effectDeg }) => {
    const what = view.text.missing(of);
    return effectDeg === null
      ? correction.measureFirst(what)
      : correction.measureGain(what, shortAngle(Math.max(LEAST_SHOWN_DEG, effectDeg), numbers));
  });
  return [view.paint("strong", correction.toMeasure), ...listed(lines.length === 0 ? [correction.nothingToMeasure] : lines, view)];
}

/** One entry a line, wrapped and indented. */
export const listed = (lines: readonly string[], { width }: Pick<CorrectionView, "width">): readonly string[] =>
  lines.flatMap((line) => wrap(line, width, "    ", "  "));
