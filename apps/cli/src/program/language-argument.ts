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
