import { useEffect } from "react";
import type { OpenCase } from "../../device/open-case.js";

/** Ctrl+Z and Ctrl+Shift+Z or Ctrl+Y (Command on a Mac), in fields as well: what is typed goes into the case letter by letter. */
export function useUndoKeys({ undo, redo }: OpenCase): void {
  useEffect(() => {
    const pressed = (event: KeyboardEvent): void => {
      if (!(event.ctrlKey || event.metaKey) || event.altKey || event.defaultPrevented) return;
      const key = event.key.toLowerCase();
      const act = key === "y" || (key === "z" && event.shiftKey) ? redo : key === "z" ? undo : null;
      if (!act) return;
      event.preventDefault();
      act();
    };
    window.addEventListener("keydown", pressed);
    return () => window.removeEventListener("keydown", pressed);
  }, [undo, redo]);
}
