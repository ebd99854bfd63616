import type { Case } from "@halfturn/casefile";
import type { Reason, ReasonCode } from "@halfturn/engine/correction";
import type { Finding } from "@halfturn/engine/findings";
import { correctionNames, correctionText } from "@halfturn/words";
import { fileName } from "../files/read-case.js";
import { type CliContext, fail } from "../program/context.js";
import { BAD_USE, UNANSWERED } from "../program/exit-code.js";

/** Something has to be gauged, measured or noted first; everything else was typed wrong, or stands wrong in the file. */
const NOT_YET: ReadonlySet<ReasonCode> = new Set<ReasonCode>([
  "correction.stop-finding",
  "correction.phasing-not-measured",
  "correction.shaft-not-gauged",
  "correction.moves-refused-driveline",
  "correction.no-driveline",
  "correction.no-adjusters",
  "correction.support-not-given",
  "correction.length-not-measured",
  "correction.powertrain-not-measured",
  "correction.axle-guide-not-measured",
  "correction.caster-not-given",
]);

/** Says why nothing was computed, one line for each reason, and how a stop finding is overridden. */
export function refuse(reasons: readonly Reason[], findings: readonly Finding[], document: Case, path: string, context: CliContext): void {
  const { words } = context;
  const text = correctionText(words, correctionNames(document, words));
  const lines = reasons.map((reason) => `${fileName(path, words)}: ${reason.path}: ${text.reason(reason)}`);
  const stopped = reasons.some(({ code }) => code === "correction.stop-finding" || code === "correction.moves-refused-driveline");
  const codes = [...new Set(findings.flatMap(({ code, severity }) => (severity === "stop" ? [code] : [])))];
  const hint = stopped && codes.length > 0 ? [words.terminal.analysed.withheldHint(codes.join(" --accept "))] : [];
  fail(context, reasons.every(({ code }) => NOT_YET.has(code)) ? UNANSWERED : BAD_USE, [...new Set(lines), ...hint]);
}
