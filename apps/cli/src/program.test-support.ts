import { type ChildProcessWithoutNullStreams, spawn } from "node:child_process";
import { copyFileSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";

type ProgramInto = (folder: string) => Promise<void>;

const here = (path: string): string => fileURLToPath(new URL(path, import.meta.url));

/** What a command line left behind. */
export interface Outcome {
  readonly code: number | null;
  readonly out: string;
  readonly err: string;
}

/** The real program, bundled as it ships, and a folder of its own to work in. */
export interface Program {
  readonly folder: string;
  /** The program itself. */
  readonly file: string;
  readonly path: (name: string) => string;
  readonly run: (
    args: readonly string[],
    options?: { readonly stdin?: string; readonly env?: Readonly<Record<string, string>> },
  ) => Promise<Outcome>;
  /** Starts the program and leaves it running. */
  readonly start: (args: readonly string[], env?: Readonly<Record<string, string>>) => ChildProcessWithoutNullStreams;
  /** Copies an example case into the folder under a name. */
  readonly example: (example: string, name: string) => void;
  /** Writes an example case, changed, under a name. */
  // biome-ignore lint/suspicious/noExplicitAny: a case is changed into something that is none
  readonly broken: (name: string, change: (document: any) => void) => void;
  readonly remove: () => void;
}

/** The folder lies below the package, where the libraries that stay outside the bundle are found. */
export async function buildProgram(): Promise<Program> {
  const below = here("../dist");
  mkdirSync(below, { recursive: true });
  const folder = mkdtempSync(join(below, "trial-"));
  const { programInto } = (await import(new URL("../../../scripts/bundle.mjs", import.meta.url).href)) as {
    readonly programInto: ProgramInto;
  };
  const program = join(folder, "program", "halfturn.js");
  const remove = (): void => rmSync(folder, { recursive: true, force: true });
  try {
    await programInto(join(folder, "program"));
  } catch (error) {
    // Nobody is given the folder then, to remove it.
    remove();
    throw error;
  }
  const work = join(folder, "work");
  mkdirSync(work);
  const exampleFile = (name: string): string => here(`../../../packages/casefile/examples/${name}.halfturn.json`);
  const start = (args: readonly string[], env: Readonly<Record<string, string>> = {}): ChildProcessWithoutNullStreams => {
    const { NO_COLOR: _no, FORCE_COLOR: _force, ...inherited } = process.env;
    return spawn(process.execPath, [program, ...args], { cwd: work, env: { ...inherited, LC_ALL: "C", ...env } });
  };
  return {
    folder: work,
    file: program,
    start,
    path: (name) => join(work, name),
    run: (args, { stdin = "", env = {} } = {}) =>
      new Promise((resolve, reject) => {
        const child = start(args, env);
        let out = "";
        let err = "";
        child.stdout.setEncoding("utf8").on("data", (text: string) => {
          out += text;
        });
        child.stderr.setEncoding("utf8").on("data", (text: string) => {
          err += text;
        });
        child.on("error", reject);
        child.on("close", (code) => resolve({ code, out, err }));
        child.stdin.on("error", () => undefined).end(stdin);
      }),
    example: (example, name) => copyFileSync(exampleFile(example), join(work, name)),
    broken: (name, change) => {
      const document: unknown = JSON.parse(readFileSync(exampleFile("two-piece"), "utf8"));
      change(document);
      writeFileSync(join(work, name), JSON.stringify(document));
    },
    remove,
  };
}
