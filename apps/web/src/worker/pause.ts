/** Lets a message in between two pieces of work, so that a stop is seen within a piece. */
export const pause = (): Promise<void> => new Promise((resolve) => setTimeout(resolve));
