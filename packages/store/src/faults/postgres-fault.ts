import { StoreFault, type StoreFaultCode } from "./store-fault.js";

/** By the beginning of the code: SQLSTATE classes and conditions (PostgreSQL manual, appendix A), or a code of the network. */
const CODES: readonly (readonly [start: string, code: StoreFaultCode])[] = [
  ["53100", "disk-full"],
  ["25006", "read-only"],
  ["28", "database-refused"],
  ["3D", "database-refused"],
  ["42501", "no-permission"],
  ["08", "database-unreachable"],
  ["57P", "database-unreachable"],
  ["53300", "database-unreachable"],
  ["55P03", "database-busy"],
  ["40", "database-busy"],
  ["XX001", "database-damaged"],
  ["XX002", "database-damaged"],
  ["ECONN", "database-unreachable"],
  ["EPIPE", "database-unreachable"],
  ["ENOTFOUND", "database-unreachable"],
  ["EAI_AGAIN", "database-unreachable"],
  ["ETIMEDOUT", "database-unreachable"],
  ["EHOSTUNREACH", "database-unreachable"],
  ["ENETUNREACH", "database-unreachable"],
  ["ENOENT", "database-unreachable"],
];

/** The driver names these by their sentence only. */
const SENTENCES = /connection terminated|timeout exceeded|connection ended|not queryable|client was closed/i;

/** What PostgreSQL or its driver said, as a fault of the store. */
export function postgresFault(error: unknown, place: string): StoreFault {
  if (error instanceof StoreFault) return error;
  const inner = error instanceof AggregateError ? error.errors[0] : error;
  const said = String((inner as { readonly code?: unknown } | null)?.code ?? "");
  const byCode = CODES.find(([start]) => said.startsWith(start))?.[1];
  const bySentence = inner instanceof Error && SENTENCES.test(inner.message) ? "database-unreachable" : undefined;
  return new StoreFault(byCode ?? bySentence ?? "database-failed", place, { cause: error });
}
