import { open, realpath, rename, rm, stat } from "node:fs/promises";
import { basename, dirname, join } from "node:path";

/** What is written at once, or piece by piece as it comes. */
type Content = string | Uint8Array | AsyncIterable<Uint8Array>;

/** Whether a file that is there already may be replaced. */
export type Existing = "replace" | "keep";

/**
 * Writes a file whole or not at all: into a neighbour first, then moved into place in one step.
 * With "keep" an existing file makes it fail with EEXIST: the name is taken before anything is written.
 */
export async function writeWhole(path: string, content: Content, existing: Existing, unique: string): Promise<void> {
  const target = existing === "replace" ? await resolved(path) : path;
  const mode = existing === "replace" ? await modeOf(target) : null;
  if (existing === "keep") await (await open(target, "wx")).close();
  const neighbour = join(dirname(target), `.${basename(target)}.${unique}.tmp`);
  try {
    await writeNew(neighbour, content, mode);
    await rename(neighbour, target);
  } catch (error) {
    await rm(neighbour, { force: true });
    if (existing === "keep") await rm(target, { force: true });
    throw error;
  }
}

async function writeNew(path: string, content: Content, mode: number | null): Promise<void> {
  const file = await open(path, "wx");
  try {
    if (mode !== null) await file.chmod(mode);
    if (typeof content === "string" || content instanceof Uint8Array) await file.writeFile(content);
    // Each piece is written where the one before ended.
    else for await (const piece of content) await file.writeFile(piece);
    await file.sync();
  } finally {
    await file.close();
  }
}

/** Where a symbolic link leads, so that the link itself stays. */
async function resolved(path: string): Promise<string> {
  try {
    return await realpath(path);
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === "ENOENT") return path;
    throw error;
  }
}

/** Permissions of the file to be replaced; null where there is none. A folder in its place is an error. */
async function modeOf(path: string): Promise<number | null> {
  try {
    const found = await stat(path);
    if (found.isDirectory()) throw Object.assign(new Error("is a folder"), { code: "EISDIR" });
    return found.mode & 0o777;
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === "ENOENT") return null;
    throw error;
  }
}
