import { resolve } from "node:path";
import type { Language, Terminal } from "@halfturn/words";
import { dataFolder } from "../files/data-folder.js";
import type { CliContext } from "../program/context.js";
import { langFlag } from "./common-flags.js";

/** Which shop a command is about. */
export interface StoreFlags {
  readonly data?: string;
  readonly database?: string;
  readonly lang?: Language;
}

const text = (brief: string, placeholder: string) => ({ kind: "parsed", parse: String, brief, optional: true, placeholder }) as const;

export const storeFlags = (terminal: Terminal) => ({
  data: text(terminal.serving.flags.data, "FOLDER"),
  database: text(terminal.serving.flags.database, "URL"),
  lang: langFlag(terminal),
});

/** The folder and the database that the flags name. */
export const storeOf = ({ data, database }: StoreFlags, { process: { env } }: CliContext) => ({
  folder: data === undefined ? dataFolder(env, process.platform) : resolve(data),
  database: database ?? null,
});
