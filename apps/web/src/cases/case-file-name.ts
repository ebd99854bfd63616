import type { Case } from "@halfturn/casefile";

const NOT_IN_FILE_NAMES = /[^\p{L}\p{N}]+/gu;
const LONGEST_NAME = 60;

/** What is saved of a case: the case itself, its report for paper, its report as a page. */
export type CaseFileKind = "halfturn.json" | "pdf" | "html";

/** "Crane-truck-3-rumble.halfturn.json": a name that a person finds again. */
export const caseFileName = ({ title, id }: Pick<Case, "title" | "id">, kind: CaseFileKind): string => {
  const name = title
    .replace(NOT_IN_FILE_NAMES, "-")
    .slice(0, LONGEST_NAME)
    .replace(/^-+|-+$/g, "");
  return `${name || id}.${kind}`;
};
