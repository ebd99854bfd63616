import type { CliContext } from "../program/context.js";

/** Where a report goes, and which kind of file its ending asks for. */
export interface ReportFile {
  readonly path: string;
  readonly kind: "pdf" | "html";
}

/** Throwing is how a flag's parser reports. */
export function parseReportFile(this: CliContext, input: string): ReportFile {
  const kind = /\.(pdf|html)$/i.exec(input)?.[1]?.toLowerCase();
  if (kind === "pdf" || kind === "html") return { path: input, kind };
  throw new Error(this.words.terminal.usage.outputKind);
}
