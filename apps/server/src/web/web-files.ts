import { readdirSync, readFileSync, statSync } from "node:fs";
import { extname, join } from "node:path";
import { gzipSync } from "node:zlib";

export interface WebFile {
  readonly type: string;
  readonly content: Uint8Array<ArrayBuffer>;
  /** The same, compressed; null where that gains nothing. */
  readonly gzip: Uint8Array<ArrayBuffer> | null;
  /** Built with its content's hash in its name: it never changes. */
  readonly immutable: boolean;
}

/** The built app, held in memory: only what was found in the folder can ever be asked for. */
export interface WebFiles {
  /** By its path from the root, `/assets/x.js`; null where there is none. */
  readonly file: (path: string) => WebFile | null;
}

const TYPES: Readonly<Record<string, string>> = {
  ".html": "text/html; charset=utf-8",
  ".js": "text/javascript; charset=utf-8",
  ".css": "text/css; charset=utf-8",
  ".svg": "image/svg+xml",
  ".json": "application/json",
  ".map": "application/json",
  ".webmanifest": "application/manifest+json",
  ".txt": "text/plain; charset=utf-8",
  ".png": "image/png",
  ".jpg": "image/jpeg",
  ".webp": "image/webp",
  ".ico": "image/x-icon",
  ".woff2": "font/woff2",
  ".wasm": "application/wasm",
};

const COMPRESSIBLE = /^(text|image\/svg|application\/(json|manifest|wasm))/;
const SMALLEST_COMPRESSED = 500;
const HASHED = /^\/assets\/.+-[A-Za-z0-9_-]{8,}\.[a-z0-9]+$/;

export const INDEX = "/index.html";

/** Reads the folder at once, and again whenever its index.html has changed. A folder without one is no app: every file is null. */
export function webFiles(folder: string): WebFiles {
  let files: ReadonlyMap<string, WebFile> = new Map();
  let readAt = -1;
  return {
    file: (path) => {
      const builtAt = modifiedAt(join(folder, INDEX));
      if (builtAt !== readAt && builtAt >= 0) files = readFolder(folder);
      readAt = builtAt;
      return builtAt < 0 ? null : (files.get(path) ?? null);
    },
  };
}

function modifiedAt(file: string): number {
  return statSync(file, { throwIfNoEntry: false })?.mtimeMs ?? -1;
}

function readFolder(folder: string): ReadonlyMap<string, WebFile> {
  const entries = readdirSync(folder, { recursive: true, withFileTypes: true }).filter((entry) => entry.isFile());
  return new Map(
    entries.map((entry) => {
      const file = join(entry.parentPath, entry.name);
      const path = file.slice(folder.length).replaceAll("\\", "/").replace(/^\/*/, "/");
      return [path, webFile(path, new Uint8Array(readFileSync(file)))];
    }),
  );
}

function webFile(path: string, content: Uint8Array<ArrayBuffer>): WebFile {
  const type = TYPES[extname(path)] ?? "application/octet-stream";
  const gzip = COMPRESSIBLE.test(type) && content.byteLength > SMALLEST_COMPRESSED ? new Uint8Array(gzipSync(content)) : null;
  return { type, content, gzip, immutable: HASHED.test(path) };
}
