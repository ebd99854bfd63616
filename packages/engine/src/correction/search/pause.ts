/**
 * Gives the host a turn between pieces of work, so that a button pressed meanwhile is seen: `() => new Promise((resolve) => setTimeout(resolve))`.
 * The engine knows no timer of its own; without a pause only promises get their turn.
 */
export type Pause = () => Promise<void>;
