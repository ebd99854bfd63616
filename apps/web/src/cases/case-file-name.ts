import type { Case } from "@halfturn/casefile";

const NOT_IN_FILE_NAMES = /[^\p{L}\p{N}]+/gu;
const LONGEST_NAME = 60;

/** "Crane-truck-3-rumble.halfturn.json". */
export const caseFileName = ({ title, id }: Pick<Case, "title" | "id">): string => {
  const name = title
    .replace(NOT_IN_FILE_NAMES, "-")
    .slice(0, LONGEST_NAME)
    .replace(/^-+|-+$/g, "");
  return `${name || id}.halfturn.json`;
};
