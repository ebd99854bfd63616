import { isLanguage, type Language, languageOf } from "@halfturn/words";

/** The language of the words: `--lang`, else the environment's, else English. A wrong `--lang` is reported later, by the command itself. */
export function languageArgument(args: readonly string[], env: Readonly<Partial<Record<string, string>>>): Language {
  const end = args.indexOf("--");
  const flags = end < 0 ? args : args.slice(0, end);
  const at = flags.findIndex((arg) => arg === "--lang" || arg.startsWith("--lang="));
  const asked = at < 0 ? undefined : flags[at] === "--lang" ? flags[at + 1] : flags[at]?.slice("--lang=".length);
  if (asked !== undefined && isLanguage(asked)) return asked;
  return languageOf(env.LC_ALL || env.LC_MESSAGES || env.LANG);
}

/** The arguments as the commands know them: a `--lang` before the command has been read already, or goes to the command that will report what is wrong with it. */
export function afterLanguage(args: readonly string[]): readonly string[] {
  const [first] = args;
  const words = first === "--lang" ? 2 : first?.startsWith("--lang=") ? 1 : 0;
  const rest = args.slice(words);
  const [command, ...others] = rest;
  if (words === 0 || command === undefined) return rest;
  const asked = words === 2 ? args[1] : first?.slice("--lang=".length);
  return asked !== undefined && isLanguage(asked) ? rest : [command, ...args.slice(0, words), ...others];
}
