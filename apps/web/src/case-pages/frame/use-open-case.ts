import { useEffect, useState, useSyncExternalStore } from "react";
import { openAnywhere } from "../../device/device.js";
import type { OpenCase } from "../../device/open-case.js";

/** undefined while it is being opened; null where neither this device nor the server has such a case. */
export function useOpenCase(id: string): OpenCase | null | undefined {
  const [found, setFound] = useState<{ readonly id: string; readonly open: OpenCase | null } | null>(null);
  useEffect(() => {
    let wanted = true;
    void openAnywhere(id).then((open) => {
      if (wanted) setFound({ id, open });
    });
    return () => {
      wanted = false;
    };
  }, [id]);
  return found?.id === id ? found.open : undefined;
}

/** Whether there is something to undo, and to redo. */
export const useUndoable = (open: OpenCase): readonly [canUndo: boolean, canRedo: boolean] => [
  useSyncExternalStore(open.subscribe, open.canUndo),
  useSyncExternalStore(open.subscribe, open.canRedo),
];

/** The case as it is now, with what became of it on the way to the server. */
export const useRecord = (open: OpenCase) => useSyncExternalStore(open.subscribe, open.record);

/** What the case says, which sending it does not change. */
export const useDocument = (open: OpenCase) => useSyncExternalStore(open.subscribe, () => open.record().document);
