import type { Page } from "playwright-core";

/** Paths of all files that only the app of this page sees. */
export const privateFiles = (page: Page): Promise<readonly string[]> =>
  page.evaluate(async () => {
    interface Folder {
      readonly entries: () => AsyncIterable<readonly [string, FileSystemHandle]>;
    }
    const found: string[] = [];
    const look = async (folder: FileSystemDirectoryHandle, at: string): Promise<void> => {
      for await (const [name, one] of (folder as unknown as Folder).entries()) {
        if (one.kind === "directory") await look(one as FileSystemDirectoryHandle, `${at}${name}/`);
        else found.push(at + name);
      }
    };
    await look(await navigator.storage.getDirectory(), "");
    return found;
  });
