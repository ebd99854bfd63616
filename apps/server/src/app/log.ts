/** One line of JSON for each thing that happened. */
export type Log = (entry: LogEntry) => void;

export interface LogEntry {
  readonly event: string;
  readonly [key: string]: unknown;
}

/** A log that writes lines, each with its time first. */
export const lineLog =
  (write: (line: string) => void, now: () => string): Log =>
  (entry) =>
    write(`${JSON.stringify({ time: now(), ...entry })}\n`);

/** What an error says, for the log; never for an answer. */
export const errorText = (error: unknown): string => {
  if (!(error instanceof Error)) return String(error);
  const cause = error.cause === undefined ? "" : ` (${error.cause instanceof Error ? error.cause.message : String(error.cause)})`;
  return `${error.name}: ${error.message}${cause}`;
};
