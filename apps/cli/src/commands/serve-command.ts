import type { Terminal } from "@halfturn/words";
import { buildCommand, type Command } from "@stricli/core";
import type { CliContext } from "../program/context.js";
import { langFlag } from "./common-flags.js";
import { helpText } from "./help-text.js";
import type { ServeFlags } from "./serve-flags.js";
import { wholeNumber } from "./whole-number.js";

const DEFAULT_PORT = 4680;
const MOST_PORT = 65_535;

function parsePort(this: CliContext, input: string): number {
  return wholeNumber(input, 0, MOST_PORT, this.words);
}

export const serveCommand = (terminal: Terminal): Command<CliContext> => {
  const { brief, description, flags } = terminal.serving;
  const text = (about: string, placeholder: string) =>
    ({ kind: "parsed", parse: String, brief: about, optional: true, placeholder }) as const;
  return buildCommand<ServeFlags, [], CliContext>({
    loader: async () => (await import("./serve.js")).runServe,
    parameters: {
      flags: {
        port: { kind: "parsed", parse: parsePort, brief: flags.port, default: String(DEFAULT_PORT), placeholder: "N" },
        data: text(flags.data, "FOLDER"),
        database: text(flags.database, "URL"),
        demo: { kind: "boolean", brief: flags.demo, default: true },
        web: text(flags.web, "FOLDER"),
        lang: langFlag(terminal),
      },
    },
    docs: { brief, fullDescription: helpText(description) },
  });
};
