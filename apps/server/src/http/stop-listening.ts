import type { Server, ServerResponse } from "node:http";
import type { Server as TlsServer } from "node:https";

/** Longer than any request takes that is worth waiting for. */
const PATIENCE_MS = 10_000;

/**
 * Follows the requests of a server, and gives what ends it: no new connection is taken, every answer that was begun is finished, then all connections are
 * closed - browsers keep some open that never carried a request.
 */
export function stopListening(server: Server | TlsServer): () => Promise<void> {
  const answering = new Set<ServerResponse>();
  let whenQuiet: (() => void) | undefined;
  server.on("request", (_, response) => {
    answering.add(response);
    response.once("close", () => {
      answering.delete(response);
      if (answering.size === 0) whenQuiet?.();
    });
  });
  return () =>
    new Promise((resolve) => {
      server.close(() => resolve());
      const late = setTimeout(() => server.closeAllConnections(), PATIENCE_MS).unref();
      whenQuiet = () => {
        clearTimeout(late);
        server.closeAllConnections();
      };
      if (answering.size === 0) whenQuiet();
    });
}
