import type { Catalogue, Terminal } from "@halfturn/words";
import {
  type ApplicationText,
  type ArgumentParseError,
  ArgumentScannerError,
  type EnumValidationError,
  type FlagNotFoundError,
  formatMessageForArgumentScannerError,
  text_en,
} from "@stricli/core";

/** The library hands suggestions over in back quotes. */
const quoted = (items: readonly string[]): string => items.map((item) => `"${item.replaceAll("`", "")}"`).join(", ");

/** Everything that the command line library says, in our words: one line for each error, with what to type instead. */
export function textOf(words: Catalogue): ApplicationText {
  const { terminal, numbers } = words;
  const { usage, flags } = terminal;
  return {
    ...text_en,
    headers: terminal.headers,
    keywords: terminal.keywords,
    briefs: { help: flags.help, helpAll: flags.helpAll, version: flags.version, argumentEscapeSequence: flags.escape },
    noCommandRegisteredForInput: ({ input, corrections }) => usage.unknownCommand(input, quoted(corrections)),
    exceptionWhileParsingArguments: (error) =>
      error instanceof ArgumentScannerError ? scannerText(error, usage, (values) => numbers.any(values)) : terminal.crash(causeOf(error)),
    exceptionWhileLoadingCommandFunction: (error) => terminal.crash(causeOf(error)),
    exceptionWhileLoadingCommandContext: (error) => terminal.crash(causeOf(error)),
    exceptionWhileRunningCommand: (error) => terminal.crash(causeOf(error)),
    commandErrorResult: (error) => error.message,
  };
}

const scannerText = (error: ArgumentScannerError, usage: Terminal["usage"], any: (values: readonly string[]) => string): string =>
  formatMessageForArgumentScannerError(error, {
    FlagNotFoundError: ({ input, corrections }: FlagNotFoundError) =>
      usage.unknownFlag(`--${input}`, corrections.map((flag) => `--${flag}`).join(", ")),
    AliasNotFoundError: ({ input }) => usage.unknownAlias(input),
    ArgumentParseError: ({ externalFlagNameOrPlaceholder, input, exception }: ArgumentParseError) =>
      usage.badValue(place(externalFlagNameOrPlaceholder), input, causeOf(exception)),
    EnumValidationError: ({ externalFlagName, input, values }: EnumValidationError) =>
      usage.notAllowed(externalFlagName, input, any(values)),
    UnsatisfiedFlagError: ({ externalFlagName }) => usage.flagWithoutValue(externalFlagName),
    UnexpectedFlagError: ({ externalFlagName }) => usage.flagTwice(externalFlagName),
    InvalidNegatedFlagSyntaxError: ({ externalFlagName }) => usage.negatedWithValue(externalFlagName),
    UnsatisfiedPositionalError: ({ placeholder }) => usage.argumentMissing(placeholder),
    UnexpectedPositionalError: ({ input, expectedCount }) => usage.argumentTooMany(input, expectedCount),
  });

/** Arguments are written in capitals, flags in small letters. */
const place = (name: string): string => (name === name.toUpperCase() ? name : `--${name}`);

const causeOf = (error: unknown): string => (error instanceof Error ? error.message : String(error)).replaceAll(/\s+/g, " ");
