import { liveRate, type MotionTake } from "./motion-recording.js";

/** here: this device may tell its motion. insecure: it might, but the page came over plain HTTP. none: no such device. */
export type MotionAvailability = "here" | "insecure" | "none";

/** A desk computer also claims to have the event; only a device for fingers is asked. */
export function motionAvailability(): MotionAvailability {
  if (!window.matchMedia("(pointer: coarse)").matches) return "none";
  if (!window.isSecureContext) return "insecure";
  return "DeviceMotionEvent" in window ? "here" : "none";
}

interface AsksPermission {
  readonly requestPermission?: () => Promise<string>;
}

/** Asks for the motion sensor where a browser wants to be asked; to be called from a tap. */
export async function askForMotion(): Promise<boolean> {
  const asks = DeviceMotionEvent as unknown as AsksPermission;
  return !asks.requestPermission || (await asks.requestPermission().catch(() => "denied")) === "granted";
}

/** The motion of the device while it is being recorded. */
export interface MotionWatch {
  readonly seconds: () => number;
  /** Samples per second by the events' own time stamps; null while there are too few. */
  readonly rate: () => number | null;
  /** m/s; null while the receiver says nothing. */
  readonly speed: () => number | null;
  readonly stop: () => MotionTake;
}

const [PER_SECOND, TO_SECONDS] = [1000, 1e-3];

/** Records the motion, gravity included, and the receiver's speed on the same clock. */
export function watchMotion(withSpeed: boolean): MotionWatch {
  const began = performance.now() * TO_SECONDS;
  const take = {
    times: [] as number[],
    x: [] as number[],
    y: [] as number[],
    z: [] as number[],
    speedTimes: [] as number[],
    speeds: [] as number[],
  };
  const moved = ({ accelerationIncludingGravity: a, timeStamp }: DeviceMotionEvent): void => {
    if (a?.x == null || a.y == null || a.z == null) return;
    take.times.push(timeStamp * TO_SECONDS - began);
    take.x.push(a.x);
    take.y.push(a.y);
    take.z.push(a.z);
  };
  window.addEventListener("devicemotion", moved);
  const watch =
    withSpeed && "geolocation" in navigator
      ? navigator.geolocation.watchPosition(
          ({ coords, timestamp }) => {
            if (coords.speed === null || Number.isNaN(coords.speed)) return;
            // A position is stamped in milliseconds since 1970; the page's clock began at timeOrigin.
            take.speedTimes.push((timestamp - performance.timeOrigin) / PER_SECOND - began);
            take.speeds.push(coords.speed);
          },
          () => undefined,
          { enableHighAccuracy: true, maximumAge: 0 },
        )
      : null;
  return {
    seconds: () => Math.max(0, performance.now() * TO_SECONDS - began),
    rate: () => liveRate(take.times),
    speed: () => take.speeds.at(-1) ?? null,
    stop: () => {
      window.removeEventListener("devicemotion", moved);
      if (watch !== null) navigator.geolocation.clearWatch(watch);
      return take;
    },
  };
}
