import { tmpdir } from "node:os";
import type { Terminal } from "@halfturn/words";
import type { SpoolFailure } from "./temporary-spools.js";

const codeOf = (error: unknown): string =>
  error instanceof Error ? String((error as NodeJS.ErrnoException).code ?? error.message) : String(error);

/** Why a file could not be read, and what to do about it, on one line. Only a case can be made anew. */
export function readFault(error: unknown, name: string, kind: "case" | "recording", { files }: Terminal): string {
  const code = codeOf(error);
  if (code === "ENOENT" || code === "ENOTDIR") return kind === "case" ? files.noCase(name) : files.noRecording(name);
  if (code === "EISDIR") return files.isFolder(name);
  if (code === "EACCES" || code === "EPERM") return files.noPermission(name);
  return files.cannotRead(name, code);
}

/** Why a file could not be written, and what to do about it, on one line. */
export function writeFault(error: unknown, name: string, { files }: Terminal): string {
  const code = codeOf(error);
  if (code === "EEXIST") return files.exists(name);
  if (code === "ENOENT" || code === "ENOTDIR") return files.noFolder(name);
  if (code === "EISDIR") return files.isFolder(name);
  if (code === "EACCES" || code === "EPERM" || code === "EROFS") return files.noPermission(name);
  return files.cannotWrite(name, code);
}

/** Why a long recording found no room beside memory, and what to do about it, on one line. */
export const spoolFault = ({ cause }: SpoolFailure, recording: string, { listening }: Terminal): string =>
  listening.noRoom(recording, tmpdir(), codeOf(cause));
