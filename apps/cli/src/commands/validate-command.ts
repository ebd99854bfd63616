import type { Terminal } from "@halfturn/words";
import { buildCommand, type Command } from "@stricli/core";
import type { CliContext } from "../program/context.js";
import { fileArgument, langFlag } from "./common-flags.js";
import { helpText } from "./help-text.js";
import type { ValidateFlags } from "./validate-flags.js";

export const validateCommand = (terminal: Terminal): Command<CliContext> =>
  buildCommand<ValidateFlags, [string], CliContext>({
    loader: async () => (await import("./validate.js")).runValidate,
    parameters: {
      flags: { lang: langFlag(terminal) },
      positional: { kind: "tuple", parameters: [fileArgument(terminal.args.file)] },
    },
    docs: { brief: terminal.commands.validate, fullDescription: helpText(terminal.descriptions.validate) },
  });
