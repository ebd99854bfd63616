import { liveRate, type MotionTake, RATE_TIMES } from "./motion-recording.js";

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
  /** What came since the last time it was asked; null where nothing did. */
  readonly drain: () => MotionTake | null;
  readonly stop: () => void;
}

const [PER_SECOND, TO_SECONDS] = [1000, 1e-3];

const COLUMNS = ["times", "x", "y", "z", "speedTimes", "speeds"] as const satisfies readonly (keyof MotionTake)[];
type Gathered = { readonly [Column in (typeof COLUMNS)[number]]: number[] };
const gather = (): Gathered => ({ times: [], x: [], y: [], z: [], speedTimes: [], speeds: [] });

/** Records the motion, gravity included, and the receiver's speed on the same clock. */
export function watchMotion(withSpeed: boolean): MotionWatch {
  const began = performance.now() * TO_SECONDS;
  let gathered = gather();
  let lately: readonly number[] = [];
  let lastSpeed: number | null = null;
  const moved = ({ accelerationIncludingGravity: a, timeStamp }: DeviceMotionEvent): void => {
    if (a?.x == null || a.y == null || a.z == null) return;
    gathered.times.push(timeStamp * TO_SECONDS - began);
    gathered.x.push(a.x);
    gathered.y.push(a.y);
    gathered.z.push(a.z);
  };
  window.addEventListener("devicemotion", moved);
  const watch =
    withSpeed && "geolocation" in navigator
      ? navigator.geolocation.watchPosition(
          ({ coords, timestamp }) => {
            if (coords.speed === null || Number.isNaN(coords.speed)) return;
            // A position is stamped in milliseconds since 1970; the page's clock began at timeOrigin.
            gathered.speedTimes.push((timestamp - performance.timeOrigin) / PER_SECOND - began);
            gathered.speeds.push(coords.speed);
            lastSpeed = coords.speed;
          },
          () => undefined,
          { enableHighAccuracy: true, maximumAge: 0 },
        )
      : null;
  return {
    seconds: () => Math.max(0, performance.now() * TO_SECONDS - began),
    rate: () => liveRate([...lately, ...gathered.times]),
    speed: () => lastSpeed,
    drain: () => {
      const all = gathered;
      if (all.times.length + all.speedTimes.length === 0) return null;
      gathered = gather();
      lately = [...lately, ...all.times].slice(-RATE_TIMES);
      return Object.fromEntries(COLUMNS.map((column) => [column, Float64Array.from(all[column])])) as unknown as MotionTake;
    },
    stop: () => {
      window.removeEventListener("devicemotion", moved);
      if (watch !== null) navigator.geolocation.clearWatch(watch);
    },
  };
}
