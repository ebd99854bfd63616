/** What a colour stands for. Words say the same beside it. */
export type Tone = "good" | "bad" | "doubt" | "note" | "aside" | "strong";

export type Paint = (tone: Tone, text: string) => string;

/** Colour-blind-safe set of Okabe and Ito (2008), nearest of the 256 terminal colours: bluish green, vermillion, orange, sky blue. */
const CODES: Readonly<Record<Tone, string>> = {
  good: "38;5;36",
  bad: "1;38;5;166",
  doubt: "38;5;214",
  note: "38;5;74",
  aside: "2",
  strong: "1",
};

/** Paints with terminal colours, or leaves text as it is. */
export const paintOf = (colour: boolean): Paint =>
  colour ? (tone, text) => (text === "" ? "" : `\u001B[${CODES[tone]}m${text}\u001B[0m`) : (_, text) => text;

/** The text without its colour codes. */
// biome-ignore lint/suspicious/noControlCharactersInRegex: terminal colour codes begin with one
export const unpainted = (text: string): string => text.replaceAll(/\u001B\[[\d;]*m/g, "");

/** Width on screen: colour codes take none. */
export const widthOf = (text: string): number => [...unpainted(text)].length;
