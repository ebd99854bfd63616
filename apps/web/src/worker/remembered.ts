/** The last answers of something that is asked the same again, and beforehand. */
export interface Remembered<Question, Answer> {
  readonly ask: (question: Question) => Promise<Answer>;
  /** The answer where it is in already; asks nothing. */
  readonly known: (question: Question) => Answer | null;
}

interface Entry<Answer> {
  readonly answer: Promise<Answer>;
  made: Answer | null;
}

/** `most`: how many answers are kept, those asked for last. `keyOf`: equal for questions with one answer. A question that failed is forgotten. */
export function remembering<Question, Answer>(
  most: number,
  keyOf: (question: Question) => string,
  answer: (question: Question) => Promise<Answer>,
): Remembered<Question, Answer> {
  const entries = new Map<string, Entry<Answer>>();
  return {
    ask: (question) => {
      const key = keyOf(question);
      const found = entries.get(key);
      entries.delete(key);
      const entry = found ?? { answer: answer(question), made: null };
      entries.set(key, entry);
      if (found) return found.answer;
      for (const [oldest] of entries) {
        if (entries.size <= most) break;
        entries.delete(oldest);
      }
      entry.answer.then(
        (made) => {
          entry.made = made;
        },
        () => {
          if (entries.get(key) === entry) entries.delete(key);
        },
      );
      return entry.answer;
    },
    known: (question) => entries.get(keyOf(question))?.made ?? null,
  };
}
