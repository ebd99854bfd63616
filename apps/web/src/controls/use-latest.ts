import { useCallback, useLayoutEffect, useRef } from "react";

/** One function for good that does what the newest one does: what it is given to need not be drawn anew because a callback was made anew. */
export function useLatest<Args extends readonly unknown[]>(act: (...args: Args) => void): (...args: Args) => void {
  const now = useRef(act);
  useLayoutEffect(() => {
    now.current = act;
  });
  return useCallback((...args: Args) => now.current(...args), []);
}
