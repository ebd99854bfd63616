import { ExitCode } from "@stricli/core";

export const COMPUTED = 0;
/** Nothing answerable, refused by a stop finding, or a limit passed under --strict. */
export const UNANSWERED = 1;
export const BAD_USE = 2;
/** Stopped by hand: 128 + the number of the signal, as shells have it. */
export const STOPPED = 130;
/** A fault of the program itself; no input should lead here. */
export const FAULT = 70;

const OWN: ReadonlyMap<unknown, number> = new Map([
  [ExitCode.UnknownCommand, BAD_USE],
  [ExitCode.InvalidArgument, BAD_USE],
]);

/** The exit code that callers may rely on, whatever the command line library uses inside. */
export function exitCodeOf(code: unknown): number {
  if (code === COMPUTED || code === UNANSWERED || code === BAD_USE || code === STOPPED || code === FAULT) return code;
  return OWN.get(code) ?? FAULT;
}
