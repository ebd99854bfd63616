/** Controls, formats that turn the direction of text round, line and paragraph separators, and what is no character at all: any could make a line read as what it is not. */
const INVISIBLE = /[\p{Cc}\p{Cf}\p{Zl}\p{Zp}\p{Cs}\p{Co}\p{Cn}]/gu;

/** Line breaks and tabs, the soft hyphen, and the joiners that several scripts and emoji are written with. */
const KEPT: ReadonlySet<string> = new Set(["\n", "\r", "\t", "\u00ad", "\u200c", "\u200d"]);

/** "[U+1F527]": a character as its code point, where it cannot be shown as itself. */
export const codeOf = (character: string): string =>
  `[U+${(character.codePointAt(0) as number).toString(16).toUpperCase().padStart(4, "0")}]`;

export const showInvisible = (text: string): string =>
  text.replace(INVISIBLE, (character) => (KEPT.has(character) ? character : codeOf(character)));
