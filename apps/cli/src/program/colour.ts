/** Colour on a terminal only; NO_COLOR (any value) forbids it, FORCE_COLOR (but 0) asks for it, and NO_COLOR wins (no-color.org). */
export function colourWanted(terminal: boolean, env: Readonly<Partial<Record<string, string>>>): boolean {
  if (env.NO_COLOR) return false;
  const forced = env.FORCE_COLOR;
  if (forced !== undefined && forced !== "") return forced !== "0" && forced !== "false";
  return terminal && env.TERM !== "dumb";
}
