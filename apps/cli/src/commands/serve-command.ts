import type { Terminal } from "@halfturn/words";
import { buildCommand, type Command } from "@stricli/core";
import type { CliContext } from "../program/context.js";
import { switchFlag } from "./common-flags.js";
import { helpText } from "./help-text.js";
import type { ServeFlags } from "./serve-flags.js";
import { storeFlags } from "./store-flags.js";
import { wholeNumber } from "./whole-number.js";

const DEFAULT_PORT = 4680;
const MOST_PORT = 65_535;

function parsePort(this: CliContext, input: string): number {
  return wholeNumber(input, 0, MOST_PORT, this.words);
}

export const serveCommand = (terminal: Terminal): Command<CliContext> => {
  const { brief, description, flags } = terminal.serving;
  return buildCommand<ServeFlags, [], CliContext>({
    loader: async () => (await import("./serve.js")).runServe,
    parameters: {
      flags: {
        port: { kind: "parsed", parse: parsePort, brief: flags.port, default: String(DEFAULT_PORT), placeholder: "N" },
        ...storeFlags(terminal),
        demo: { kind: "boolean", brief: flags.demo, default: true },
        lan: switchFlag(flags.lan),
        web: { kind: "parsed", parse: String, brief: flags.web, optional: true, placeholder: "FOLDER" },
      },
    },
    docs: { brief, fullDescription: helpText(description) },
  });
};
