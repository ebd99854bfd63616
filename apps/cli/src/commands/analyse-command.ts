import type { Terminal } from "@halfturn/words";
import { buildCommand, type Command } from "@stricli/core";
import type { CliContext } from "../program/context.js";
import type { AnalyseFlags } from "./analyse-flags.js";
import { acceptFlag, drawsFlag, fileArgument, gaugingFlag, langFlag, seedFlag, stageFlag, switchFlag, unitsFlag } from "./common-flags.js";
import { helpText } from "./help-text.js";

export const analyseCommand = (terminal: Terminal): Command<CliContext> =>
  buildCommand<AnalyseFlags, [string], CliContext>({
    loader: async () => (await import("./analyse.js")).runAnalyse,
    parameters: {
      flags: {
        stage: stageFlag(terminal),
        gauging: gaugingFlag(terminal),
        accept: acceptFlag(terminal),
        strict: switchFlag(terminal.flags.strict),
        json: switchFlag(terminal.flags.json),
        seed: seedFlag(terminal),
        draws: drawsFlag(terminal),
        units: unitsFlag(terminal),
        lang: langFlag(terminal),
      },
      positional: { kind: "tuple", parameters: [fileArgument(terminal.args.file)] },
    },
    docs: { brief: terminal.commands.analyse, fullDescription: helpText(terminal.descriptions.analyse) },
  });
