import type { Terminal } from "@halfturn/words";
import { buildCommand, type Command } from "@stricli/core";
import type { CliContext } from "../program/context.js";
import type { BackupFlags } from "./backup-flags.js";
import { helpText } from "./help-text.js";
import { type StoreFlags, storeFlags } from "./store-flags.js";

export const backupCommand = (terminal: Terminal): Command<CliContext> => {
  const { brief, description, output } = terminal.serving.backup;
  return buildCommand<BackupFlags, [], CliContext>({
    loader: async () => (await import("./backup.js")).runBackup,
    parameters: {
      flags: { output: { kind: "parsed", parse: String, brief: output, placeholder: "FILE" }, ...storeFlags(terminal) },
      aliases: { o: "output" },
    },
    docs: { brief, fullDescription: helpText(description) },
  });
};

export const restoreCommand = (terminal: Terminal): Command<CliContext> => {
  const { brief, description, file } = terminal.serving.restore;
  return buildCommand<StoreFlags, [string], CliContext>({
    loader: async () => (await import("./backup.js")).runRestore,
    parameters: {
      flags: storeFlags(terminal),
      positional: { kind: "tuple", parameters: [{ parse: String, brief: file, placeholder: "FILE" }] },
    },
    docs: { brief, fullDescription: helpText(description) },
  });
};
