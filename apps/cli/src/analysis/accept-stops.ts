import { type Case, serialise } from "@halfturn/casefile";
import type { Finding, FindingCode } from "@halfturn/engine/findings";
import { STANDARD_INPUT } from "../files/read-case.js";
import { writeWhole } from "../files/write-whole.js";
import type { CliContext } from "../program/context.js";

/** What became of each `--accept`. */
export interface Acceptance {
  /** Codes that stop this analysis and that a person now takes responsibility for. */
  readonly accepted: readonly FindingCode[];
  readonly document: Case;
  /** One line for each `--accept`, for standard error. */
  readonly lines: readonly string[];
}

/** Sorts the `--accept` codes into those that match a present stop finding, those recorded before, and idle ones. Nothing is written yet. */
export function acceptStops(
  codes: readonly FindingCode[],
  analysed: readonly { readonly analysis: { readonly findings: readonly Finding[] } }[],
  document: Case,
  path: string,
  context: CliContext,
): Acceptance {
  const { made } = context.words.terminal;
  const recorded = new Set((document.acceptedFindings ?? []).map(({ code }) => code));
  const present = new Set(
    analysed.flatMap(({ analysis }) => analysis.findings.flatMap(({ code, severity }) => (severity === "stop" ? [code] : []))),
  );
  const asked = [...new Set(codes)];
  const accepted = asked.filter((code) => present.has(code) && !recorded.has(code));
  const lines = asked.map((code) => {
    if (recorded.has(code)) return made.acceptedBefore(code);
    if (!present.has(code)) return made.acceptIdle(code);
    return path === STANDARD_INPUT ? made.acceptedUnrecorded(code) : made.accepted(code, path);
  });
  if (accepted.length === 0) return { accepted, document, lines };
  const at = context.now();
  const acceptedFindings = [...(document.acceptedFindings ?? []), ...accepted.map((code) => ({ code, at }))];
  return { accepted, document: { ...document, updatedAt: at, acceptedFindings }, lines };
}

/** Writes what was accepted into the case file; standard input has no file to write to. */
export async function recordAcceptance({ accepted, document }: Acceptance, asRead: Case, path: string, context: CliContext): Promise<void> {
  if (accepted.length === 0 || path === STANDARD_INPUT) return;
  await writeWhole(path, serialise(document, asRead), "replace", context.newId());
}
