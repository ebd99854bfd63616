import { type Case, keptKeys } from "@halfturn/casefile";
import type { Finding, FindingCode } from "@halfturn/engine/findings";
import { drivelineName, drivelineOfPath, findingText, namesOf } from "@halfturn/words";
import type { View } from "./view.js";
import { wrap } from "./wrap.js";

/** Findings that speak of something to be added to the case, not of what its numbers say. */
const MISSING: ReadonlySet<FindingCode> = new Set<FindingCode>([
  "gauging.nothing-read",
  "gauging.shaft-not-read",
  "gauging.group-not-tied",
  "gauging.no-check-reading",
  "gauging.zero-not-checked",
  "gauging.heading-not-measured",
  "driveline.phasing-not-measured",
  "driveline.phasing-unknown",
  "driveline.arm-reference-missing",
  "vehicle.no-maximum-speed",
]);

/** A valid case in a few lines: what is in it, and what it still lacks. */
export function summaryLines(name: string, document: Case, findings: readonly Finding[], view: View): readonly string[] {
  const { valid } = view.words.terminal;
  const gaugings = document.gauging ?? [];
  const kept = keptKeys(document);
  const lacking = [...descriptionLacking(document, view), ...findingsLacking(document, findings, view)];
  return [
    view.paint("good", valid.headline(name)),
    ...(document.title === "" ? [] : wrap(document.title, view.width, "  ")),
    `  ${valid.drivelines(document.drivelines.length, total(document.drivelines.map(({ joints }) => joints.length)))}`,
    `  ${valid.gaugings(gaugings.length, total(gaugings.map(({ readings }) => readings.length)))}`,
    "",
    ...(lacking.length === 0
      ? [valid.complete]
      : [view.paint("strong", valid.missing), ...lacking.flatMap((line) => wrap(line, view.width, "    ", "  "))]),
    ...(kept.length === 0 ? [] : ["", ...wrap(view.words.labels.keptKeys(kept.join(", ")), view.width, "")]),
  ];
}

function descriptionLacking(document: Case, { words }: View): readonly string[] {
  const { valid } = words.terminal;
  const { vehicle, complaint } = document;
  return [
    ...(vehicle?.label ? [] : [valid.noVehicle]),
    ...(complaint && Object.keys(complaint).length > 0 ? [] : [valid.noComplaint]),
    ...document.drivelines.flatMap(({ sections }, index) =>
      sections.every(({ lengthMm }) => lengthMm !== undefined) ? [] : [valid.noLengths(drivelineName(document, index, words))],
    ),
  ];
}

function findingsLacking(document: Case, findings: readonly Finding[], { words }: View): readonly string[] {
  const lines = findings
    .filter(({ code }) => MISSING.has(code))
    .map((finding) => {
      const { path } = finding;
      const nameOf = namesOf(document, drivelineOfPath(document, path), words);
      const { title, doNext } = findingText(words, finding, nameOf);
      const name = nameOf(path);
      const place = name === path ? path : `${capital(name)} (${path})`;
      return `${place === "" ? "" : `${place}: `}${title}. ${doNext}`;
    });
  return [...new Set(lines)];
}

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

const total = (counts: readonly number[]): number => counts.reduce((sum, count) => sum + count, 0);
