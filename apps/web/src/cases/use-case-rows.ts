import type { CaseSummary } from "@halfturn/exchange";
import { useEffect, useMemo, useState, useSyncExternalStore } from "react";
import { useFollowed } from "../controls/use-followed.js";
import { server, shelf, sync } from "../device/device.js";
import type { DeviceCase } from "../device/device-case.js";
import { type CaseRow, caseRows, type DrawnRow, drawnRows } from "./case-rows.js";

/** The server is asked when the typing rests. */
const SETTLED_MS = 250;

const NOTHING: readonly CaseSummary[] = [];

/** The list of cases, from this device at once and from the server when it answers; null until the device has answered. */
export function useCaseRows(words: string, putAway: boolean): readonly CaseRow[] | null {
  const [kept, setKept] = useState<readonly DeviceCase[] | null>(null);
  const [held, setHeld] = useState<readonly CaseSummary[]>(NOTHING);
  const { connection } = useSyncExternalStore(sync.subscribe, sync.status);
  const changes = useSyncExternalStore(sync.subscribeChanges, sync.changes);
  useEffect(() => {
    let wanted = true;
    const read = () => void shelf.list().then((list) => (wanted ? setKept(list) : undefined));
    read();
    const stop = shelf.subscribe(read);
    return () => {
      wanted = false;
      stop();
    };
  }, []);
  // biome-ignore lint/correctness/useExhaustiveDependencies: a change told by the server, or its return, asks for the list again
  useEffect(() => {
    let wanted = true;
    const asking = setTimeout(async () => {
      const page = await server.list({ words, after: null, putAway });
      if (wanted) setHeld(page?.cases ?? NOTHING);
    }, SETTLED_MS);
    return () => {
      wanted = false;
      clearTimeout(asking);
    };
  }, [words, putAway, connection, changes]);
  return useMemo(() => kept && caseRows(kept, held, { words, putAway }), [kept, held, words, putAway]);
}

/** The rows that are drawn now; the others follow, or go, as the device can. */
export function useDrawnRows(rows: readonly CaseRow[]): readonly DrawnRow[] {
  const followed = useFollowed(rows);
  return useMemo(() => drawnRows(rows, followed), [rows, followed]);
}
