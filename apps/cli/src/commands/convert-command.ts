import type { Terminal } from "@halfturn/words";
import { buildCommand, type Command } from "@stricli/core";
import { ENCODINGS, parseRecordingFile } from "../convert/recording-file.js";
import type { CliContext } from "../program/context.js";
import { langFlag, switchFlag } from "./common-flags.js";
import type { ConvertFlags } from "./convert-flags.js";
import { helpText } from "./help-text.js";

export function convertCommand(terminal: Terminal): Command<CliContext> {
  const { converting } = terminal;
  const { flags } = converting;
  const number = (brief: string, placeholder: string, parse: typeof parseSeconds) =>
    ({ kind: "parsed", parse, brief, placeholder, optional: true }) as const;
  return buildCommand<ConvertFlags, [string], CliContext>({
    loader: async () => (await import("./convert.js")).runConvert,
    parameters: {
      flags: {
        output: { kind: "parsed", parse: parseRecordingFile, brief: flags.output, placeholder: "OUT" },
        case: { kind: "parsed", parse: String, brief: flags.case, placeholder: "FILE", optional: true },
        channel: { kind: "parsed", parse: String, brief: flags.channel, placeholder: "NAME", variadic: true, optional: true },
        from: number(flags.from, "S", parseSeconds),
        to: number(flags.to, "S", parseSeconds),
        encoding: { kind: "enum", values: ENCODINGS, brief: flags.encoding, optional: true },
        fullScale: number(flags.fullScale, "VALUE", parseAbove),
        decimal: { kind: "enum", values: ["point", "comma"], brief: flags.decimal, optional: true },
        force: switchFlag(terminal.flags.force),
        json: switchFlag(terminal.flags.json),
        lang: langFlag(terminal),
      },
      aliases: { o: "output" },
      positional: { kind: "tuple", parameters: [{ parse: String, brief: terminal.listening.recordingArgument, placeholder: "RECORDING" }] },
    },
    docs: { brief: converting.brief, fullDescription: helpText(converting.description) },
  });
}

/** Throwing is how a flag's parser reports. */
function parseSeconds(this: CliContext, input: string): number {
  const seconds = Number(input);
  if (input.trim() !== "" && Number.isFinite(seconds) && seconds >= 0) return seconds;
  throw new Error(this.words.terminal.converting.seconds);
}

function parseAbove(this: CliContext, input: string): number {
  const value = Number(input);
  if (Number.isFinite(value) && value > 0) return value;
  throw new Error(this.words.terminal.converting.aboveZero);
}
