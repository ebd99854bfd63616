import type { Terminal } from "@halfturn/words";
import { buildCommand, type Command } from "@stricli/core";
import type { CliContext } from "../program/context.js";
import { langFlag, switchFlag, unitsFlag } from "./common-flags.js";
import { helpText } from "./help-text.js";
import type { ListenFlags } from "./listen-flags.js";

export function listenCommand(terminal: Terminal): Command<CliContext> {
  const { listening } = terminal;
  const textFlag = (brief: string, placeholder: string) => ({ kind: "parsed", parse: String, brief, placeholder, optional: true }) as const;
  return buildCommand<ListenFlags, [string], CliContext>({
    loader: async () => (await import("./listen.js")).runListen,
    parameters: {
      flags: {
        case: { kind: "parsed", parse: String, brief: listening.flags.case, placeholder: "FILE" },
        channel: textFlag(listening.flags.channel, "NAME"),
        speedFrom: textFlag(listening.flags.speedFrom, "COLUMN"),
        speedFile: textFlag(listening.flags.speedFile, "FILE"),
        gear: textFlag(terminal.flags.gear, "LABEL"),
        figure: { kind: "parsed", parse: parsePicture, brief: listening.flags.figure, placeholder: "FILE", optional: true },
        keep: switchFlag(listening.flags.keep),
        json: switchFlag(terminal.flags.json),
        units: unitsFlag(terminal),
        lang: langFlag(terminal),
      },
      positional: { kind: "tuple", parameters: [{ parse: String, brief: listening.recordingArgument, placeholder: "RECORDING" }] },
    },
    docs: { brief: listening.brief, fullDescription: helpText(listening.description) },
  });
}

/** The name of a picture. Throwing is how a flag's parser reports. */
function parsePicture(this: CliContext, input: string): string {
  if (input.toLowerCase().endsWith(".svg")) return input;
  throw new Error(this.words.terminal.listening.figureKind);
}
