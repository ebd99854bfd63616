import type { Terminal } from "@halfturn/words";
import { buildCommand, type Command } from "@stricli/core";
import type { CliContext } from "../program/context.js";
import { drawsFlag, fileArgument, langFlag, seedFlag, unitsFlag } from "./common-flags.js";
import { helpText } from "./help-text.js";
import { parseReportFile } from "./report-file.js";
import type { ReportFlags } from "./report-flags.js";

export const reportCommand = (terminal: Terminal): Command<CliContext> =>
  buildCommand<ReportFlags, [string], CliContext>({
    loader: async () => (await import("./report.js")).runReport,
    parameters: {
      flags: {
        output: { kind: "parsed", parse: parseReportFile, brief: terminal.flags.output, placeholder: "OUT" },
        paper: { kind: "enum", values: ["a4", "letter"], brief: terminal.flags.paper, default: "a4" },
        seed: seedFlag(terminal),
        draws: drawsFlag(terminal),
        units: unitsFlag(terminal),
        lang: langFlag(terminal),
      },
      aliases: { o: "output" },
      positional: { kind: "tuple", parameters: [fileArgument(terminal.args.file)] },
    },
    docs: { brief: terminal.commands.report, fullDescription: helpText(terminal.descriptions.report) },
  });
