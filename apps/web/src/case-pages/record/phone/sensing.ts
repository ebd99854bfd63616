import { recordMicrophone } from "./microphone.js";
import { askForMotion, watchMotion } from "./motion.js";
import type { PhoneKind } from "./phone-kind.js";
import type { TakeChunk } from "./take-store.js";

/** A sensor of this device that is being listened to. */
export interface Sensing {
  readonly kind: PhoneKind;
  /** Samples per second of a sound; null where every sample has its own time. */
  readonly soundRate: number | null;
  readonly seconds: () => number;
  /** As it is measured; null while there is too little. */
  readonly rate: () => number | null;
  /** m/s; null while the receiver says nothing; undefined where it was not asked. */
  readonly speed: () => number | null | undefined;
  /** What came since the last time it was asked; null where nothing did. */
  readonly drain: () => TakeChunk | null;
  readonly stop: () => Promise<void>;
}

/** Starts a sensor, from a tap. null where the browser was not allowed to; may reject for the same reason. */
export async function startSensing(kind: PhoneKind, withSpeed: boolean): Promise<Sensing | null> {
  if (kind === "sound") {
    const { rate, seconds, drain, stop } = await recordMicrophone();
    const chunk = (): TakeChunk | null => {
      const samples = drain();
      return samples && { samples };
    };
    return { kind, soundRate: rate, seconds, rate: () => rate, speed: () => undefined, drain: chunk, stop };
  }
  if (!(await askForMotion())) return null;
  const { seconds, rate, speed, drain, stop } = watchMotion(withSpeed);
  return {
    kind,
    soundRate: null,
    seconds,
    rate,
    speed: () => (withSpeed ? speed() : undefined),
    drain: () => {
      const take = drain();
      return take && { ...take };
    },
    stop: async () => stop(),
  };
}
