import type { Server, ServerResponse } from "node:http";
import type { Server as TlsServer } from "node:https";

/** Longer than any request takes that is worth waiting for. */
export const STOP_PATIENCE_MS = 10_000;

export interface Listening {
  /** Requests whose answer is not finished. */
  readonly unanswered: () => number;
  readonly stop: () => Promise<void>;
}

/**
 * Follows the requests of a server, and gives what ends it: no new connection is taken, every answer that was begun is finished, then all connections are
 * closed - browsers keep some open that never carried a request.
 */
export function stopListening(server: Server | TlsServer): Listening {
  const answering = new Set<ServerResponse>();
  let whenQuiet: (() => void) | undefined;
  server.on("request", (_, response) => {
    answering.add(response);
    response.once("close", () => {
      answering.delete(response);
      if (answering.size === 0) whenQuiet?.();
    });
  });
  const stop = (): Promise<void> =>
    new Promise((resolve) => {
      server.close(() => resolve());
      const late = setTimeout(() => server.closeAllConnections(), STOP_PATIENCE_MS).unref();
      whenQuiet = () => {
        clearTimeout(late);
        server.closeAllConnections();
      };
      if (answering.size === 0) whenQuiet();
    });
  return { unanswered: () => answering.size, stop };
}
