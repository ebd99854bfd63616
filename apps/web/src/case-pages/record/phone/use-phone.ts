import type { Recording } from "@halfturn/recordings";
import { useEffect, useRef, useState } from "react";
import { recordMicrophone } from "./microphone.js";
import { askForMotion, watchMotion } from "./motion.js";
import { motionRecording } from "./motion-recording.js";
import { screenAwake } from "./screen-awake.js";

export type PhoneKind = "motion" | "sound";

export type PhoneState =
  | { readonly state: "idle" | "asking" | "denied" | "silent" }
  | {
      readonly state: "running";
      readonly kind: PhoneKind;
      readonly seconds: number;
      readonly rate: number | null;
      /** m/s; null while the receiver says nothing; undefined where it was not asked. */
      readonly speed: number | null | undefined;
    };

interface Running {
  readonly kind: PhoneKind;
  readonly look: () => PhoneState;
  readonly stop: () => Promise<Recording | null>;
}

const TICK_MS = 250;

async function begin(kind: PhoneKind, withSpeed: boolean): Promise<Running | null> {
  if (kind === "sound") {
    const take = await recordMicrophone();
    return { kind, stop: take.stop, look: () => ({ state: "running", kind, seconds: take.seconds(), rate: take.rate, speed: undefined }) };
  }
  if (!(await askForMotion())) return null;
  const watch = watchMotion(withSpeed);
  return {
    kind,
    look: () => ({ state: "running", kind, seconds: watch.seconds(), rate: watch.rate(), speed: withSpeed ? watch.speed() : undefined }),
    stop: async () => {
      const take = watch.stop();
      return take.times.length === 0 ? null : motionRecording(take);
    },
  };
}

/** Starts and stops a recording by this device's own sensors, from a tap. */
export function usePhone(onTaken: (recording: Recording, kind: PhoneKind) => void) {
  const [state, setState] = useState<PhoneState>({ state: "idle" });
  const running = useRef<Running | null>(null);
  const sleep = useRef<() => void>(() => undefined);
  useEffect(() => {
    const tick = window.setInterval(() => {
      if (running.current) setState(running.current.look());
    }, TICK_MS);
    return () => {
      window.clearInterval(tick);
      sleep.current();
      void running.current?.stop();
    };
  }, []);
  const start = async (kind: PhoneKind, withSpeed: boolean): Promise<void> => {
    setState({ state: "asking" });
    const begun = await begin(kind, withSpeed).catch(() => null);
    if (begun) sleep.current = await screenAwake();
    running.current = begun;
    setState(begun ? begun.look() : { state: "denied" });
  };
  const stop = async (): Promise<void> => {
    const ending = running.current;
    running.current = null;
    sleep.current();
    const taken = await ending?.stop();
    setState({ state: taken ? "idle" : "silent" });
    if (ending && taken) onTaken(taken, ending.kind);
  };
  return { state, start, stop };
}
