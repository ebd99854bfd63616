import type { Layout } from "@halfturn/casefile";
import type { Terminal } from "@halfturn/words";
import { buildCommand, type Command } from "@stricli/core";
import type { CliContext } from "../program/context.js";
import { fileArgument, langFlag, switchFlag } from "./common-flags.js";
import { helpText } from "./help-text.js";
import type { NewFlags } from "./new-flags.js";

/** Spelled out here so that help and completion need not load the case file's schema; a test keeps it equal to the case file's own list. */
export const NEW_LAYOUTS = ["one-piece", "two-piece", "three-piece", "four-wheel-drive"] as const satisfies readonly Layout[];

export const newCommand = (terminal: Terminal): Command<CliContext> =>
  buildCommand<NewFlags, [string], CliContext>({
    loader: async () => (await import("./new.js")).runNew,
    parameters: {
      flags: {
        layout: { kind: "enum", values: NEW_LAYOUTS, brief: terminal.flags.layout },
        title: { kind: "parsed", parse: String, brief: terminal.flags.title, placeholder: "TITLE" },
        force: switchFlag(terminal.flags.force),
        lang: langFlag(terminal),
      },
      positional: { kind: "tuple", parameters: [fileArgument(terminal.args.newFile)] },
    },
    docs: { brief: terminal.commands.new, fullDescription: helpText(terminal.descriptions.new) },
  });
