import { wrap } from "../render/wrap.js";

const HELP_WIDTH = 80;

/** The longer text of a help page, broken into lines that fit a plain terminal. */
export const helpText = (text: string): string =>
  text
    .split("\n")
    .flatMap((paragraph) => wrap(paragraph, HELP_WIDTH, ""))
    .join("\n");
