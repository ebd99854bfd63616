import type { Case, Problem } from "@halfturn/casefile";
import { same } from "@halfturn/exchange";
import { shelf } from "../device/device.js";
import { newId } from "../device/new-id.js";
import { caseText, restoreCase } from "../worker/worker-client.js";
import { caseFileName } from "./case-file-name.js";

/** What became of a file that somebody opened. */
export type OpenedFile =
  | { readonly is: "opened"; readonly id: string }
  | { readonly is: "refused"; readonly file: string; readonly problems: readonly Problem[] }
  /** A case of this id is here, and it is another. */
  | { readonly is: "differs"; readonly document: Case };

/** Puts the case of a file among the cases of this device. */
export async function openCaseFile(file: File): Promise<OpenedFile> {
  const restored = await restoreCase(await file.text());
  if (!restored.ok) return { is: "refused", file: file.name, problems: restored.problems };
  const { case: document } = restored;
  const here = await shelf.open(document.id);
  if (here && !same(here.record().document, document)) return { is: "differs", document };
  const open = here ?? (await shelf.add(document));
  if (open.record().putAway) open.putAway(false);
  return { is: "opened", id: document.id };
}

/** The same case under an id of its own. */
export async function addCopy(document: Case, title: string): Promise<string> {
  const open = await shelf.add({ ...document, id: newId(), title });
  return open.record().id;
}

/** How long a browser may take to begin with a file. */
const RELEASE_MS = 60_000;

/** Hands the case's file to the browser, which keeps it where files are kept. */
export async function saveCaseFile(document: Case): Promise<void> {
  const url = URL.createObjectURL(new Blob([await caseText(document)], { type: "application/json" }));
  const link = window.document.createElement("a");
  link.href = url;
  link.download = caseFileName(document, "halfturn.json");
  link.click();
  setTimeout(() => URL.revokeObjectURL(url), RELEASE_MS);
}
