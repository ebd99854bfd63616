import type { Case } from "@halfturn/casefile";

const WORD = /[\p{L}\p{N}]+/gu;
const MARKS = /\p{M}/gu;
/** Longer ones are cut, in what is kept and in what is asked for alike. */
const LONGEST_WORD = 40;
/** A case of notes to the limit of its file has no more words than this that anybody would look for. */
const MOST_WORDS = 4000;
/** Nobody types more; a longer question is answered by its beginning. */
const MOST_ASKED = 12;

/** The words of a text: letters and digits only, small, without accents, each once, in the order in which they first stand. */
export function wordsOf(text: string): readonly string[] {
  const plain = text.normalize("NFKD").replaceAll(MARKS, "").toLowerCase();
  return [...new Set(Array.from(plain.matchAll(WORD), ([word]) => word.slice(0, LONGEST_WORD)))];
}

/** The words that are asked for. */
export const askedWords = (text: string): readonly string[] => wordsOf(text).slice(0, MOST_ASKED);

/** Every word a case is found by: its id, title, vehicle, complaint and all its notes. */
export function searchWords(document: Case): readonly string[] {
  const texts = [
    document.title,
    document.id,
    document.vehicle?.label ?? "",
    document.complaint?.notes ?? "",
    document.notes ?? "",
    ...(document.gauging ?? []).map(({ notes }) => notes ?? ""),
  ];
  return wordsOf(texts.join(" ")).slice(0, MOST_WORDS);
}
