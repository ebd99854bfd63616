import { useEffect, useRef, useState } from "react";
import { newId } from "../../../device/new-id.js";
import type { PhoneKind } from "./phone-kind.js";
import { awakeUnlessLeft } from "./screen-awake.js";
import { type Sensing, startSensing } from "./sensing.js";
import { holdTake } from "./take-lock.js";
import { type TakeHead, takeStore } from "./take-store.js";
import { newTakeWriter, type TakeWriter } from "./take-writer.js";

export type PhoneState =
  | { readonly state: "idle" | "asking" | "denied" }
  | {
      readonly state: "running";
      readonly seconds: number;
      readonly rate: number | null;
      /** m/s; null while the receiver says nothing; undefined where it was not asked. */
      readonly speed: number | null | undefined;
    };

interface Running {
  readonly sensing: Sensing;
  readonly head: TakeHead;
  readonly writer: TakeWriter;
  /** Lets the screen sleep, and says that nobody records this any more. */
  readonly release: () => void;
}

const TICK_MS = 250;
/** How often what came is written away: no more than this is lost by a reload. */
const WRITE_TICKS = 4;

const look = ({ seconds, rate, speed }: Sensing): PhoneState => ({ state: "running", seconds: seconds(), rate: rate(), speed: speed() });

const write = ({ sensing, writer }: Running): void => {
  const chunk = sensing.drain();
  if (chunk) writer.append(chunk);
};

/** Ends the sensor and writes the last of it. */
async function end(running: Running): Promise<void> {
  await running.sensing.stop();
  write(running);
  await running.writer.written();
  running.release();
}

/** Starts and stops a recording by this device's own sensors, from a tap. It is written away as it comes; a page that is left ends it, and what there is of it stays. */
export function usePhone(caseId: string, onTaken: (head: TakeHead, writer: TakeWriter) => Promise<void>) {
  const [state, setState] = useState<PhoneState>({ state: "idle" });
  const running = useRef<Running | null>(null);
  const isLeft = useRef(false);
  useEffect(() => {
    let ticks = 0;
    isLeft.current = false;
    const tick = window.setInterval(() => {
      const current = running.current;
      if (!current) return;
      setState(look(current.sensing));
      ticks += 1;
      if (ticks % WRITE_TICKS === 0) write(current);
    }, TICK_MS);
    return () => {
      window.clearInterval(tick);
      isLeft.current = true;
      if (running.current) void end(running.current);
      running.current = null;
    };
  }, []);
  const start = async (kind: PhoneKind, withSpeed: boolean): Promise<void> => {
    setState({ state: "asking" });
    const sensing = await startSensing(kind, withSpeed).catch(() => null);
    if (!sensing) {
      setState({ state: "denied" });
      return;
    }
    // The page may have been left while the browser asked: nobody could stop the sensor then.
    const sleep = await awakeUnlessLeft(() => isLeft.current);
    if (sleep === null) return sensing.stop();
    const head: TakeHead = { id: newId(), caseId, kind, startedAt: new Date().toISOString(), rate: sensing.soundRate };
    const letGo = holdTake(head.id);
    const release = (): void => {
      sleep();
      letGo();
    };
    running.current = { sensing, head, writer: newTakeWriter(takeStore, head), release };
    setState(look(sensing));
  };
  const stop = async (): Promise<void> => {
    const ending = running.current;
    running.current = null;
    if (!ending) return;
    await end(ending);
    setState({ state: "idle" });
    await onTaken(ending.head, ending.writer);
  };
  return { state, start, stop };
}
