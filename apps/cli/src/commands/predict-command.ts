import type { Terminal } from "@halfturn/words";
import { buildCommand, type Command } from "@stricli/core";
import type { CliContext } from "../program/context.js";
import { acceptFlag, drawsFlag, fileArgument, gaugingFlag, langFlag, seedFlag, switchFlag, unitsFlag } from "./common-flags.js";
import { helpText } from "./help-text.js";
import type { PredictFlags } from "./predict-flags.js";

export const predictCommand = (terminal: Terminal): Command<CliContext> =>
  buildCommand<PredictFlags, [string], CliContext>({
    loader: async () => (await import("./predict.js")).runPredict,
    parameters: {
      flags: {
        change: { kind: "parsed", parse: String, brief: terminal.flags.change, placeholder: "ID=AMOUNT", variadic: true },
        gauging: gaugingFlag(terminal),
        accept: acceptFlag(terminal),
        json: switchFlag(terminal.flags.json),
        seed: seedFlag(terminal),
        draws: drawsFlag(terminal),
        units: unitsFlag(terminal),
        lang: langFlag(terminal),
      },
      positional: { kind: "tuple", parameters: [fileArgument(terminal.args.file)] },
    },
    docs: { brief: terminal.commands.predict, fullDescription: helpText(terminal.descriptions.predict) },
  });
