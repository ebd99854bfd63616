import type { Terminal } from "@halfturn/words";
import { buildCommand, type Command } from "@stricli/core";
import type { CliContext } from "../program/context.js";
import {
  acceptFlag,
  fileArgument,
  gaugingFlag,
  langFlag,
  maxChangesFlag,
  planDrawsFlag,
  planNumberFlag,
  seedFlag,
  switchFlag,
  unitsFlag,
} from "./common-flags.js";
import { helpText } from "./help-text.js";
import type { PlanFlags } from "./plan-flags.js";

export const planCommand = (terminal: Terminal): Command<CliContext> =>
  buildCommand<PlanFlags, [string], CliContext>({
    loader: async () => (await import("./plan.js")).runPlan,
    parameters: {
      flags: {
        maxChanges: maxChangesFlag(terminal),
        keep: { kind: "parsed", parse: String, brief: terminal.flags.keep, placeholder: "WORD", variadic: true, optional: true },
        show: planNumberFlag(terminal.flags.show),
        choose: planNumberFlag(terminal.flags.choose),
        gauging: gaugingFlag(terminal),
        accept: acceptFlag(terminal),
        json: switchFlag(terminal.flags.json),
        seed: seedFlag(terminal),
        draws: planDrawsFlag(terminal),
        units: unitsFlag(terminal),
        lang: langFlag(terminal),
      },
      positional: { kind: "tuple", parameters: [fileArgument(terminal.args.file)] },
    },
    docs: { brief: terminal.commands.plan, fullDescription: helpText(terminal.descriptions.plan) },
  });
