import { isLanguage, isUnits, type Language, languageOf, type Units } from "@halfturn/words";

/** The language of the words: `--lang`, else the environment's, else English. A wrong `--lang` is reported later, by the command itself. */
export function languageArgument(args: readonly string[], env: Readonly<Partial<Record<string, string>>>): Language {
  const asked = flagValue("--lang", args);
  if (asked !== undefined && isLanguage(asked)) return asked;
  return languageOf(env.LC_ALL || env.LC_MESSAGES || env.LANG);
}

/** The units of printed lengths and speeds: `--units`, else metric ones. A wrong `--units` is reported later, too. */
export function unitsArgument(args: readonly string[]): Units {
  const asked = flagValue("--units", args);
  return asked !== undefined && isUnits(asked) ? asked : "metric";
}

/** What a flag is given, before `--` ends the flags. */
function flagValue(flag: string, args: readonly string[]): string | undefined {
  const end = args.indexOf("--");
  const flags = end < 0 ? args : args.slice(0, end);
  const at = flags.findIndex((arg) => arg === flag || arg.startsWith(`${flag}=`));
  return at < 0 ? undefined : flags[at] === flag ? flags[at + 1] : flags[at]?.slice(flag.length + 1);
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
