/** Lets an interrupt in between two pieces of work. A timer, not a promise: only that gives it a turn. */
export const pause = (): Promise<void> => new Promise((resolve) => setTimeout(resolve));
